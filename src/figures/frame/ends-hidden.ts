import type { StandingSpot } from '../../survey/schema/standing-spot';
import { dot, mapped } from '../geometry/earth';
import { nameOf } from '../sight/hidden';
import { SightLines } from '../sight/sight-lines';
import { siteCoordinates } from '../sight/site-frame';
import { seasons } from '../sight/spot-sight';
import type { Outlook } from '../outlook';
import type { Path } from '../traffic/paths';

/** What hides an aircraft's nose and its tail: an obstacle's id or "terrain"; null for nothing. */
export interface EndsHidden {
  readonly nose: string | null;
  readonly tail: string | null;
}

/**
 * Nose and tail of the aircraft at sample `i` of a path, for the words under a picture: the figures count wheels, centre
 * and fin tip (design, section 4). `ground`: m above mean sea level under the spot.
 */
export function endsHidden(
  spot: StandingSpot,
  ground: number,
  path: Path,
  i: number,
  { around, framing, timeZone }: Outlook,
  instant: number,
  lines: SightLines = new SightLines(),
): EndsHidden {
  const [season] = around ? seasons(around, timeZone, [instant]) : [];
  const { centre, forward, attitude, headingKnown } = path.samples;
  if (!around || !season || !headingKnown) return { nose: null, tail: null };
  const { frame } = around;
  const triple = (array: Float64Array) =>
    [array[3 * i] as number, array[3 * i + 1] as number, array[3 * i + 2] as number] as const;
  const [x, y, z] = siteCoordinates(frame, triple(centre));
  const ahead = triple(forward);
  const [east, north] = [dot(ahead, frame.east), dot(ahead, frame.north)];
  const level = Math.hypot(east, north) || 1;
  const pitch = attitude[i] as number;
  const end = (half: number) => {
    const out = (half * Math.cos(pitch)) / level;
    return [x + out * east, y + out * north, z + half * Math.sin(pitch)];
  };
  const [nose, tail] = [end(framing.length / 2), end(-framing.length / 2)];
  // Each is looked for as an aircraft whose three points are one.
  const points = Float64Array.from([nose, nose, nose, tail, tail, tail].flat());
  const targets = { count: 2, points };
  const [spotX, spotY] = mapped(frame, spot.position);
  lines.stand(around, season.does, spotX, spotY, ground + spot.eyeHeight, [targets], []);
  lines.look(targets);
  const by = (which: number) => nameOf(around, lines.hiddenBy[which] as number);
  return { nose: by(0), tail: by(1) };
}
