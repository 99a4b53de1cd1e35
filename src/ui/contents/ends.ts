import type { EndRef } from '../../survey/schema/site';

const same = (a: EndRef, b: EndRef) => a.runway === b.runway && a.end === b.end;

/** The list with an end put in, or taken out when it was there. */
export function toggledEnd(list: readonly EndRef[], end: EndRef): readonly EndRef[] {
  return list.some((e) => same(e, end)) ? list.filter((e) => !same(e, end)) : [...list, end];
}

/** The other end of each runway: what is in use when the wind has turned. */
export const oppositeEnds = (list: readonly EndRef[]): readonly EndRef[] =>
  list.map(({ runway, end }) => ({ runway, end: end === 0 ? 1 : 0 }));
