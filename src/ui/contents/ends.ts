import type { ShortEnd } from '../../figures/traffic/flow/short-ends';
import type { EndRef } from '../../survey/schema/site';

const same = (a: EndRef, b: EndRef) => a.runway === b.runway && a.end === b.end;

/** The list with an end put in, or taken out when it was there. */
export function toggledEnd(list: readonly EndRef[], end: EndRef): readonly EndRef[] {
  return list.some((e) => same(e, end)) ? list.filter((e) => !same(e, end)) : [...list, end];
}

/** The other end of each runway: what is in use when the wind has turned. */
export const oppositeEnds = (list: readonly EndRef[]): readonly EndRef[] =>
  list.map(({ runway, end }) => ({ runway, end: end === 0 ? 1 : 0 }));

interface Ends {
  readonly arrivals: readonly EndRef[];
  readonly departures: readonly EndRef[];
}

const sameList = (a: readonly EndRef[], b: readonly EndRef[]) =>
  a.length === b.length && a.every((end) => b.some((e) => same(e, end)));

/** Index of the configuration that uses exactly these ends, -1 for none. */
export const configurationOf = (configurations: readonly Ends[], { arrivals, departures }: Ends): number =>
  configurations.findIndex((c) => sameList(c.arrivals, arrivals) && sameList(c.departures, departures));

interface NamedEnd {
  readonly ref: EndRef;
  readonly designator: string;
}

/** "25 for arrivals, 25 and 32 for departures"; `either`: any of them is as good, "07 or 25". */
export function endsInWords(
  { arrivals, departures }: Ends,
  ends: readonly NamedEnd[],
  either = false,
): string {
  const names = (list: readonly EndRef[]) =>
    ends
      .filter(({ ref }) => list.some((e) => same(e, ref)))
      .map((end) => end.designator)
      .join(either ? ' or ' : ' and ') || 'none';
  const [landing, leaving] = [names(arrivals), names(departures)];
  if (landing === leaving) return `${landing} for arrivals and departures`;
  return `${landing} for arrivals, ${leaving} for departures`;
}

/** "07 has 549 m for landing, A320 needs 1,700 m: the figures stand all the same." */
export function shortEndWords(
  { name, use, thereM, neededM }: ShortEnd,
  subject: string,
  length: (m: number) => string,
): string {
  const run = use === 'arrivals' ? 'landing' : 'the take-off run';
  return `${name} has ${length(thereM)} for ${run}, ${subject} needs ${length(neededM)}: the figures stand all the same.`;
}
