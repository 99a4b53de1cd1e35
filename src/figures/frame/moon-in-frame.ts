import type { StandingSpot } from '../../survey/schema/standing-spot';
import { DEG } from '../geometry/angles';
import { moonPhase, type MoonPhase } from '../light/moon';
import type { Outlook } from '../outlook';
import { SightLines } from '../sight/sight-lines';
import { behind, seasons, sightFrom } from '../sight/spot-sight';
import { eyeAt } from '../spot/eye-at';
import type { Picture } from './picture';
import { isAmong, pointsSeen, seenAt } from './points-seen';

/** The moon where a picture holds it. */
export interface MoonInFrame {
  readonly phase: MoonPhase;
  readonly lit: number;
  /** What stands before it: an obstacle's id or "terrain"; null for nothing. */
  readonly hiddenBy: string | null;
  /** Whether it stands within an aircraft's outline, of which dents are not known: it may be covered. */
  readonly atAircraft: boolean;
}

/**
 * The moon if its middle is within the frame and it is up; null elsewhere, and behind closed cloud. `ground`: m above mean sea level under the spot;
 * `instant`: ms since 1970, UTC.
 */
export function moonInFrame(
  {
    moon,
    camera,
    lens,
    sky,
    subject,
    pose,
    places,
  }: Pick<Picture, 'moon' | 'camera' | 'lens' | 'sky' | 'subject' | 'pose' | 'places'>,
  spot: StandingSpot,
  ground: number,
  { around, framing, timeZone }: Outlook,
  instant: number,
  lines: SightLines = new SightLines(),
): MoonInFrame | null {
  const { direction, lit, phase } = moon;
  const seen = seenAt(direction, camera);
  const closed = sky === 'overcast' || sky === 'heavy';
  if (closed || direction[2] <= 0 || !seen) return null;
  const { focalLength, sensorWidth, sensorHeight } = lens;
  const [across, above] = seen.map((tangent) => Math.abs(tangent) * focalLength) as [number, number];
  if (across > sensorWidth / 2 || above > sensorHeight / 2) return null;
  const [season] = around ? seasons(around, timeZone, [instant]) : [];
  const [east, north, up] = direction;
  const at = { azimuth: Math.atan2(east, north) * DEG, altitude: Math.asin(up) * DEG };
  const eye = eyeAt(spot, ground);
  const hiddenBy =
    around && season
      ? behind(sightFrom(lines, around, season.does, spot.position, eye, [], framing, [at]), at, eye, around)
      : null;
  const atAircraft = places.some((place) => isAmong(seen, pointsSeen(subject, pose, place, camera)));
  return { phase: moonPhase(phase), lit, hiddenBy, atAircraft };
}
