import { aircraftTypes, type AircraftType } from '../../survey/starter/aircraft-types';

const folded = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toUpperCase()
    .replace(/[^A-Z0-9]+/g, ' ')
    .trim();
const joined = (text: string): string => text.replaceAll(' ', '');

const known = aircraftTypes.map((type) => {
  const names = type.names.map(folded);
  return { type, names, words: names.flatMap((name) => name.split(' ')), joined: names.map(joined) };
});
/**
 * Types by designator, family, maker or everyday name ("737", "ATR", "Dash 8", "Hercules"), those first that the text
 * names most exactly; empty for what nobody here knows.
 */
export const findTypes = (text: string, limit = 20): AircraftType[] =>
  found(text)
    .slice(0, limit)
    .map(({ type }) => type);

/** The one type that a text names exactly, by designator or name; null where it names several ("737") or none. */
export function typeNamed(text: string): AircraftType | null {
  const exact = found(text).filter(({ rank }) => rank <= exactly);
  const [first, second] = exact;
  if (!first) return null;
  return !second || first.rank < second.rank ? first.type : null;
}

/** Ranks: 0 the designator, 1 a whole name or two of them (maker and model), then parts of either. */
const exactly = 1;

function found(text: string) {
  const asked = folded(text);
  if (asked === '') return [];
  const together = joined(asked);
  const words = asked.split(' ');
  const rank = ({ type, names, words: own, joined: run }: (typeof known)[number]): number => {
    if (type.designator === together) return 0;
    if (names.includes(asked) || run.includes(together)) return exactly;
    if (names.some((name) => asked.startsWith(`${name} `) && names.includes(asked.slice(name.length + 1))))
      return exactly;
    if (type.designator.startsWith(together)) return 2;
    if (words.every((word) => own.includes(word))) return 3;
    if (words.every((word) => own.some((w) => w.startsWith(word)))) return 4;
    return run.some((name) => name.includes(together)) && together.length > 2 ? 5 : Infinity;
  };
  return known
    .map((entry) => ({ type: entry.type, rank: rank(entry) }))
    .filter((entry) => Number.isFinite(entry.rank))
    .sort((a, b) => a.rank - b.rank);
}
