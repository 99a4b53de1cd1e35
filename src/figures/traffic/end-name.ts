import type { EndIndex, Runway } from '../../survey/schema/runway';

/** An end's designator as people say it, or which end it is when it has none. */
export const endName = (runway: Runway, end: EndIndex): string =>
  runway.ends[end].designator || `end ${end + 1}`;

/** "<runway id>/<designator>"; two ends of one designator get #0 and #1 behind it. */
export function endPath(runway: Runway, end: EndIndex): string {
  const [a, b] = [runway.ends[0].designator, runway.ends[1].designator];
  return `${runway.id}/${a === b ? `${a}#${end}` : runway.ends[end].designator}`;
}
