import { compassPoint } from '../../figures/geometry/compass';
import { destination, groundLine } from '../../figures/geometry/earth';
import { remembered } from '../../figures/remembered';
import type { Position } from '../../survey/document';
import type { Runway } from '../../survey/schema/runway';
import { lightColour } from '../../../styles/ramps';
import { metresPerPixel } from '../screen';
import { line, point, type OverlayFeature } from './features';

/** Pixels between the pavement's edge and the middle of the strip of each moment: A nearer, B further out, as in the rings. */
const stripAt = { a: 9, b: 18 } as const;

/**
 * A strip along a runway on the side that is lit at A, and one further out for B: where to look for a place to stand.
 * Sides by the compass, null where none is lit; times of day at the airfield, "07:30".
 */
export const litStrips = remembered(
  (
    runway: Runway,
    sideA: string | null,
    sideB: string | null,
    timeA: string,
    timeB: string,
    zoom: number,
  ): OverlayFeature[] => [
    ...strip(runway, sideA, 'a', `A ${timeA}`, zoom),
    ...strip(runway, sideB, 'b', `B ${timeB}`, zoom),
  ],
);

function strip(
  runway: Runway,
  side: string | null,
  moment: 'a' | 'b',
  text: string,
  zoom: number,
): OverlayFeature[] {
  const [start, end] = runway.line;
  const { azimuth } = groundLine(start, end);
  if (side === null || azimuth === null) return [];
  const out = azimuth + (compassPoint(azimuth + 90) === side ? 90 : -90);
  const away = runway.width / 2 + stripAt[moment] * metresPerPixel(start[1], zoom);
  // The label stands before the western end, the southern one of a runway due north, and reads towards the strip.
  const [first, last] = azimuth < 180 ? [start, end] : [end, start];
  const along: readonly [Position, Position] = [destination(first, out, away), destination(last, out, away)];
  return [
    line(along, { part: 'strip', colour: lightColour(0), runway: runway.id }),
    point(along[0], {
      part: 'strip-label',
      text,
      turn: (azimuth % 180) - 90,
      runway: runway.id,
    }),
  ];
}
