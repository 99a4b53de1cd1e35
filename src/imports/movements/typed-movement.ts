import type { Movement } from '../../survey/schema/movement';
import { readClock } from '../../time/read-stamp';

export type TypedMovement =
  | { readonly ok: true; readonly movement: Omit<Movement, 'id'> }
  | { readonly ok: false; readonly reason: string };

const uses: readonly (readonly [RegExp, Movement['use']])[] = [
  [/^(a|arr|arrivals?|arriving|l|ldg|land(?:ing|ed)?|in|inbound)$/i, 'arrival'],
  [/^(d|dep|departures?|departing|t|to|take-?off|out|outbound|off)$/i, 'departure'],
];

/** Arrival or departure by the words that people use for it; null for any other. */
export const useOf = (text: string): Movement['use'] | null =>
  uses.find(([pattern]) => pattern.test(text.trim()))?.[1] ?? null;

/** A type designator (ICAO Doc 8643): a letter first, two to four letters and digits. */
export const isType = (text: string): boolean => /^[A-Z][A-Z0-9]{1,3}$/i.test(text);

const example =
  'Type time, a or d, and type: 1425 a A320, then flight and place if you like, r25 for the runway.';

/**
 * A movement as typed in one line: "1425 a A320 ZZ123 Oskin r25 *". The time is by the airfield's clock; a star marks
 * one that is wanted. `heard`: everyday names of types, of up to three words.
 */
export function readTypedMovement(
  text: string,
  date: string | null,
  heard: TypeHeard = noNames,
): TypedMovement {
  const words = text.trim().split(/\s+/).filter(Boolean);
  const starred = words.includes('*');
  const [timeWord = '', useWord = '', ...rest] = words.filter((word) => word !== '*');
  const minute = readClock(timeWord);
  if (minute === null) return { ok: false, reason: `"${timeWord}" is no time of day. ${example}` };
  const use = useOf(useWord);
  if (use === null)
    return { ok: false, reason: `"${useWord}" says neither arrival nor departure. ${example}` };
  const end = rest.findIndex((word) => /^(r|rwy|rw)\d{1,2}[a-z]{0,2}$/i.test(word));
  const runway = end === -1 ? '' : (rest.splice(end, 1)[0] ?? '').replace(/^\D+/, '').toUpperCase();
  const type = takeType(rest, heard);
  const flight = /\d|-/.test(rest[0] ?? '') ? (rest.shift() ?? '').toUpperCase() : '';
  const movement = {
    date,
    time: clockOf(minute),
    use,
    type,
    subject: null,
    flight,
    place: rest.join(' '),
    runway: runway.padStart(/^\d\D?/.test(runway) && !/^\d\d/.test(runway) ? runway.length + 1 : 0, '0'),
    starred,
  };
  return { ok: true, movement };
}

/** What is meant by words for a type; null where they are none. */
export type TypeHeard = (words: string) => string | null;
const noNames: TypeHeard = () => null;

/** Takes the type off the front: the most words that name one, else a word that looks like a designator. */
function takeType(rest: string[], heard: TypeHeard): string {
  for (const count of [3, 2, 1]) {
    if (count > rest.length || (count === 1 && isType(rest[0] ?? ''))) continue;
    const type = heard(rest.slice(0, count).join(' '));
    if (type === null) continue;
    rest.splice(0, count);
    return type;
  }
  return isType(rest[0] ?? '') ? (rest.shift() ?? '').toUpperCase() : '';
}

/** "14:25" of minutes since midnight. */
export const clockOf = (minute: number): string =>
  `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;
