import { destination, groundLine } from '../../figures/geometry/earth';
import { wrap360 } from '../../figures/geometry/angles';
import { shortestRunway } from '../../figures/geometry/along-runway';
import type { Position } from '../../survey/document';
import type { EndIndex, Runway } from '../../survey/schema/runway';
import { metresPerPixel } from '../screen';
import { line, point, polygon, type OverlayFeature } from './features';
import { labelOf } from './label';

/** m from the threshold to the foot of the painted numeral, and its height (ICAO Annex 14 Vol I 5.2.2: from memory). */
const numeralFrom = 12;
const numeralHeight = 9;
/** Share of the pavement's width that two digits and a letter may take. */
const numeralShare = 0.5;

/** A runway as it looks from above: pavement of true width, painted marks, and its designators as painted. */
export function runwayFeatures(runway: Runway): OverlayFeature[] {
  const [start, end] = runway.line;
  const { distance: length, azimuth } = groundLine(start, end);
  if (azimuth === null || length < shortestRunway) return [];
  const { id, width } = runway;
  /** `along` m from position 0, `across` m to the right of the centreline. */
  const at = (along: number, across: number): Position =>
    destination(destination(start, azimuth, along), azimuth + 90, across);
  const half = width / 2;
  const edges = [at(0, -half), at(length, -half), at(length, half), at(0, half), at(0, -half)];
  const displaced = runway.ends.map((e) => Math.min(e.displaced, length / 2));
  const [from, to] = [displaced[0] ?? 0, length - (displaced[1] ?? 0)];
  return [
    polygon([edges], { part: 'runway', id, label: labelOf(runway.name) }),
    line([start, end], { part: 'runway-line', id }),
    line([at(from + 45, 0), at(Math.max(from + 46, to - 45), 0)], { part: 'centreline', id }),
    ...([0, 1] as const).flatMap((i) => endFeatures(runway, i, displaced[i] ?? 0, length, at)),
  ];
}

function endFeatures(
  runway: Runway,
  index: EndIndex,
  displaced: number,
  length: number,
  at: (along: number, across: number) => Position,
): OverlayFeature[] {
  const { id, width } = runway;
  // Seen from this end: `along` grows in its landing direction.
  const here = (along: number, across: number) =>
    index === 0 ? at(along, across) : at(length - along, -across);
  const landing = groundLine(here(0, 0), here(length, 0)).azimuth ?? 0;
  const { closed } = runway.ends[index];
  const designator = labelOf(runway.ends[index].designator);
  const half = width / 2;
  const features = [
    point(here(0, 0), {
      part: 'designator',
      id,
      text: designator,
      anchor: anchorTowards(landing + 180),
      closed,
      narrow: width < 18,
    }),
    line([here(displaced + 2, -half), here(displaced + 2, half)], { part: 'threshold', id }),
  ];
  const tall = Math.min(numeralHeight, width * numeralShare);
  features.push(
    point(here(displaced + numeralFrom + tall / 2, 0), {
      part: 'numeral',
      text: designator,
      closed,
      narrow: width < 18,
      // Capitals are some 0.7 of the size of a font.
      sizeAtZoom0: tall / 0.7 / metresPerPixel(runway.line[0][1], 0),
    }),
  );
  return [...features, ...leadIn(displaced, width, id, here)];
}

/** Where a text is held so that it lies beyond its place, by eighths of the circle from north. */
const anchors = ['bottom', 'bottom-left', 'left', 'top-left', 'top', 'top-right', 'right', 'bottom-right'];
const anchorTowards = (bearing: number): string =>
  anchors[Math.round(wrap360(bearing) / 45) % anchors.length] ?? 'top';

/** Arrows on the pavement before a displaced threshold, every 60 m. */
function leadIn(
  displaced: number,
  width: number,
  id: string,
  here: (along: number, across: number) => Position,
): OverlayFeature[] {
  const arm = Math.min(5, width / 4);
  const arrows: OverlayFeature[] = [];
  for (let tip = displaced - 15; tip > 2 * arm && arrows.length < 12; tip -= 60) {
    arrows.push(
      line([here(tip - 2 * arm, -arm), here(tip, 0), here(tip - 2 * arm, arm)], { part: 'lead-in', id }),
      line([here(tip, 0), here(Math.max(0, tip - 30), 0)], { part: 'lead-in', id }),
    );
  }
  return arrows;
}
