import type { NearAirfield, NearLight } from '../../ports/airfields';
import type { KeptSurvey } from '../../ports/kept-surveys';
import type { WhereTrouble } from '../../ports/whereabouts';
import { decimal } from '../../units/format';
import type { Formats } from '../formats';
import { dayWords } from '../words/lit-words';
import { RAD } from '../../survey/angles';

export const goingWords = { foot: 'on foot', bicycle: 'by bicycle', car: 'by car' } as const;

const otherwise = 'Type a town, an airfield or coordinates instead.';
/** Why the device does not say where it is, and the way on. */
export const notFoundWords: Readonly<Record<WhereTrouble, string>> = {
  refused: `This browser may not tell the page where you are. ${otherwise}`,
  lost: `This device could not find out where it is. ${otherwise}`,
  insecure: `This page came by plain http, where browsers give no position. ${otherwise}`,
  missing: `This device gives no position. ${otherwise}`,
};
export const couldNotAsk = `This part of the program could not be fetched. ${otherwise}`;

/** "35 min", "2 h 5 min", "9 h"; to the minute. */
export function minutesWords(minutes: number): string {
  const whole = Math.max(1, Math.round(minutes));
  if (whole < 60) return `${whole} min`;
  const [hours, rest] = [Math.floor(whole / 60), whole % 60];
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
}

/** "12.4 km". */
export const distanceWords = (m: number): string =>
  m < 9_950 ? `${decimal(m / 1000, 1)} km` : `${decimal(m / 1000, 0)} km`;

/** "07/25 2,450 m asphalt, 14/32 1,600 m". */
export function stripsWords({ strips, runways }: NearAirfield, format: Formats): string {
  if (strips === null) return `${runways} ${runways === 1 ? 'runway' : 'runways'}`;
  if (strips.length === 0) return 'no runway in the data';
  return strips
    .map(({ name, length, surface }) =>
      [name || 'a runway', length === null ? '' : format.length(length), surface].filter(Boolean).join(' '),
    )
    .join(', ');
}

/** One line a runway: "07/25: north side 05:40–08:15, ...". */
export const lightWords = ({ runways, day, timeZone }: NearLight, format: Formats): readonly string[] =>
  runways.length === 0
    ? ['The data do not say where its runways lie: no lit sides.']
    : runways.map(
        ({ name, spans }) =>
          `${name || 'Runway'}: ${dayWords(spans, day, (instant) => format.clockAt(instant, timeZone))}`,
      );

/** Degrees within which a survey is taken to be of an airfield: about 2 km north and south. CP. */
const sameField = 0.02;

/** The surveys that are kept of an airfield: by its code, or where the survey lies. */
export const keptOf = (
  { code, otherCodes, position }: Pick<NearAirfield, 'code' | 'otherCodes' | 'position'>,
  kept: readonly KeptSurvey[],
): readonly KeptSurvey[] =>
  kept.filter(({ facts }) => {
    if (!facts) return false;
    if (facts.place !== '' && [code, ...otherCodes].includes(facts.place)) return true;
    const { at } = facts;
    if (!at) return false;
    return (
      Math.abs(at[1] - position[1]) < sameField &&
      Math.abs(at[0] - position[0]) * Math.cos(position[1] * RAD) < sameField
    );
  });
