import { scoreAt } from '../best-in-view';
import { acosDeg, DEG, wrap360 } from '../geometry/angles';
import { radiusAlong } from '../geometry/earth';
import { glareAt, sunNearAt } from '../glare-on-view';
import type { SunThere } from '../light/sun-there';
import { aspectAt, cosPhaseAt, elevationAt, flankLitAt, lightAngleAt, lightClassAt } from '../light-on-view';
import { equivalent35 } from '../optics/framing';
import type { Outlook } from '../outlook';
import type { PathInView } from '../path-in-view';
import type { InTheWay } from '../sight/hidden';
import type { StandingWorth } from '../standing-worth';
import type { Path } from '../traffic/paths';
import type { Sample } from '../types';
import type { EyeThere } from './eye-at';

/** Degrees from true north at the eye. */
export const bearingAt = (view: PathInView, i: number): number =>
  wrap360(Math.atan2(view.east[i] as number, view.north[i] as number) * DEG);

/** m from the aircraft's centre within which nothing has a direction. */
const noDirectionWithin = 1e-3;

/** Arrays have NaN for what is not known. */
const known = (value: number): number | null => (Number.isNaN(value) ? null : value);

/** Every figure of the sample `i` of a path as the view shows it now. */
export function sampleAt(
  worth: StandingWorth,
  path: Path,
  i: number,
  sun: SunThere,
  way: InTheWay,
  eye: EyeThere,
  { framing, reach }: Outlook,
): Sample {
  const { view } = worth;
  const east = view.east[i] as number;
  const north = view.north[i] as number;
  const up = view.up[i] as number;
  const out = Math.sqrt(east * east + north * north);
  const radius = out > 0 ? radiusAlong(eye.frame, east / out, north / out) : eye.frame.normalRadius;
  const focalLength = known(view.focalAt(i));
  // An eye at the aircraft's centre looks nowhere.
  const directed = (view.range[i] as number) >= noDirectionWithin;
  return {
    station: path.samples.station[i] as number,
    height: path.samples.height[i] as number,
    onGround: path.samples.onGround[i] === 1,
    groundRange: radius * Math.atan2(out, radius + eye.elevation + up),
    slantRange: view.range[i] as number,
    bearing: directed ? bearingAt(view, i) : null,
    elevation: directed ? elevationAt(view, i) : null,
    aspect: directed ? aspectAt(view, i) : null,
    speed: known(path.samples.speed[i] as number),
    focalLength,
    focalLength35: focalLength === null ? null : equivalent35(focalLength, framing),
    lightAngle: directed ? lightAngleAt(view, i, sun) : null,
    phaseAngle: directed ? acosDeg(cosPhaseAt(view, i, sun)) : null,
    flankLit: directed ? flankLitAt(view, i, sun) : null,
    light: lightClassAt(view, i, sun),
    glare: glareAt(view, i, sun, framing, reach),
    sunNear: sunNearAt(view, i, sun, framing, reach),
    hiddenBy: way.byAt(i),
    score: scoreAt(worth, i, sun),
  };
}
