import type { EndRef } from '../../survey/schema/site';
import type { Contents } from '../../survey/contents';

const digits = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'niner'];
const sides: Readonly<Record<string, string>> = { L: 'left', R: 'right', C: 'centre', W: 'water' };

/** A designator as it is spoken, digit by digit (ICAO Doc 4444, 12.3): "25L" is "two five left". */
export const spokenEnd = (designator: string): string =>
  [...designator.toUpperCase()].flatMap((c) => digits[Number(c)] ?? sides[c] ?? []).join(' ');

/**
 * Words by which who listens knows which end is in use (phrases of ICAO Doc 4444, chapter 12, from memory; the choice
 * and the explanations are ours).
 */
export function tellingWords(
  { arrivals, departures }: Readonly<Record<'arrivals' | 'departures', readonly EndRef[]>>,
  { runways }: Pick<Contents, 'runways'>,
): string[] {
  const spoken = (refs: readonly EndRef[]) => {
    const [first] = refs;
    const end = first && runways.find(({ id }) => id === first.runway)?.ends[first.end];
    return end && end.designator !== '' ? spokenEnd(end.designator) : null;
  };
  const [landing, leaving] = [spoken(arrivals) ?? 'two five', spoken(departures) ?? 'two five'];
  return [
    `“runway ${landing} in use”: the recorded information says it first`,
    `“cleared to land, runway ${landing}”: it comes over that end's threshold`,
    `“runway ${leaving}, cleared for take-off”: it begins at that end and climbs out over the other`,
    `“line up and wait”: a departure stands on the runway within a minute or two`,
    `“long final”, “final”, “downwind”: how far off it is; “going around” brings it past you again`,
  ];
}
