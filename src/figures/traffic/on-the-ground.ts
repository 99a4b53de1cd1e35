import type { Apron, TaxiRoute } from '../../survey/schema/places';
import type { Runway } from '../../survey/schema/runway';
import type { Subject } from '../../survey/schema/subject';
import { RAD } from '../geometry/angles';
import { frameAt, groundLine, placed } from '../geometry/earth';
import { inPieces } from '../geometry/in-pieces';
import { middleOf } from '../geometry/middle-of';
import { hover, noseAttitude, taxiSpeed } from '../practice';
import { groundAt } from '../sight/ground';
import type { Terrain } from '../sight/terrain';
import { courseSamples } from './flight-path';
import { longestFlown } from './runway-geometry';
import { axesAt, sampled, type PathSamples } from './samples';

/** m between places at which a taxi route asks the terrain: finer than any elevation model at hand. */
const groundStep = 20;

/**
 * An aircraft rolling, or a helicopter hovering, along a taxi route, in the order of its positions or the other way round; stations from where
 * it begins. Null for a route without length, or far too long to be one. `field`: m above mean sea level.
 */
export function taxiSamples(
  { line }: TaxiRoute,
  direction: 'forward' | 'backward',
  subject: Subject,
  runways: readonly Runway[],
  field: number,
  terrain: Terrain | null,
): PathSamples | null {
  const drawn = direction === 'forward' ? line : line.toReversed();
  let length = 0;
  for (const [i, position] of drawn.entries())
    length += groundLine(drawn[i - 1] ?? position, position).distance;
  if (length > longestFlown) return null;
  // The ground between two vertices is the terrain's too, and wheels are on it.
  const way = terrain ? inPieces(drawn, terrain.frame, groundStep) : drawn;
  // A helicopter has skids rather than wheels more often than not: it hovers along.
  const hovers = subject.propulsion === 'rotor';
  const lift = subject.height / 2 + (hovers ? hover.taxiHeight : 0);
  const heights = way.map((position) => groundAt(position, runways, field, terrain).elevation + lift);
  return courseSamples({ line: way, heights }, field, () => ({
    attitude: noseAttitude.ground,
    speed: Math.min(hovers ? hover.taxiSpeed : taxiSpeed, subject.approachSpeed),
    onGround: !hovers,
  }));
}

/**
 * An aircraft parked in the middle of an apron: one sample at station 0. It stands for itself, so its share is 1,
 * though it has no length. Null for an area without a middle.
 */
export function parkedSamples(
  { rings, heading }: Apron,
  subject: Subject,
  runways: readonly Runway[],
  field: number,
  terrain: Terrain | null,
): PathSamples | null {
  const position = middleOf(rings[0] ?? []);
  if (!position) return null;
  const frame = frameAt(position);
  const centreHeight = groundAt(position, runways, field, terrain).elevation + subject.height / 2;
  const facing = (heading ?? 0) * RAD;
  const samples = sampled(
    [0],
    () => ({
      centre: placed(frame, 0, 0, centreHeight),
      ...axesAt(frame, 0, 0, Math.sin(facing), Math.cos(facing)),
      slope: 0,
      attitude: noseAttitude.ground,
      height: centreHeight - field,
      speed: 0,
      onGround: true,
    }),
    heading !== null,
  );
  samples.share[0] = 1;
  return samples;
}
