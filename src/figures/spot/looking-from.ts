import type { StandingSpot } from '../../survey/schema/standing-spot';
import { sunAt } from '../light/sun';
import { sunThere } from '../light/sun-there';
import type { Outlook } from '../outlook';
import { groundUnder } from '../sight/ground';
import { inTheWay, openGround } from '../sight/hidden';
import type { SightLines } from '../sight/sight-lines';
import { seasons, sightFrom, sunBehind, targetsAlong } from '../sight/spot-sight';
import type { Path } from '../traffic/paths';
import { eyeAt } from './eye-at';

/** An eye at a spot, and how to look from there along one of these paths at an instant (ms since 1970, UTC). */
export function lookingFrom(
  spot: StandingSpot,
  paths: readonly Path[],
  outlook: Outlook,
  instant: number,
  lines: SightLines,
) {
  const { around, framing, timeZone } = outlook;
  const ground = groundUnder(spot, outlook.runways, outlook.fieldElevation, around?.terrain);
  const eye = eyeAt(spot, ground.elevation);
  const sun = sunAt(spot.position, instant);
  const sky = outlook.skyAt(instant);
  const [season] = around ? seasons(around, timeZone, [instant]) : [];
  if (!around || !season)
    return { eye, sun: sunThere(sun, false, sky), look: () => ({ sight: null, way: openGround }) };
  const sight = sightFrom(lines, around, season.does, spot.position, eye, paths, framing, [sun]);
  const look = (path: Path) => {
    sight.look(targetsAlong(path, framing, around));
    return { sight, way: inTheWay(path.samples, sight, around) };
  };
  return { eye, sun: sunThere(sun, sunBehind(sight, sun, eye, around) !== null, sky), look };
}
