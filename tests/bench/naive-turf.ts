import { bearing, destination, distance, point } from '@turf/turf';
import type { Contents } from '../../src/survey/contents';
import type { Position } from '../../src/survey/document';
import { aspectFactor, hazeFactor, lightFactor } from '../../src/figures/score';
import { angleBetween, DEG } from '../../src/figures/geometry/angles';
import { reachFactor, reachOf } from '../../src/figures/optics/reach';
import { sunAt } from '../../src/figures/light/sun';
import type { Path } from '../../src/figures/traffic/paths';

/**
 * What one would write first: for every sample of every path a handful of Turf calls and flat triangles, for both
 * moments, with the full score of each. A sphere, and no six-point framing: the subject's longer side is fitted.
 */
export function naiveTurf(
  spot: Position,
  paths: readonly Path[],
  contents: Contents,
  instants: readonly number[],
): number {
  const { subject, body, kit } = contents;
  const reach = reachOf(kit);
  const eye = point([...spot]);
  let best = 0;
  for (const path of paths) {
    const runway = contents.runways.find((r) => r.id === path.ref.runway);
    if (!runway || path.ref.end === null) continue;
    const [from, to] = path.ref.end === 0 ? runway.line : [runway.line[1], runway.line[0]];
    const track = bearing([...from], [...to]);
    for (let i = 0; i < path.samples.count; i++) {
      const station = path.samples.station[i] as number;
      const alongTrack = path.ref.kind === 'arrival' ? -station : station;
      const aircraft = destination([...from], alongTrack / 1000, track);
      const ground = distance(eye, aircraft) * 1000;
      const up = path.samples.height[i] as number;
      const slant = Math.hypot(ground, up);
      const elevation = Math.atan2(up, ground) * DEG;
      const towards = bearing(eye, aircraft);
      const back = bearing(aircraft, eye);
      const aspect = angleBetween(track, back);
      const needed =
        (kit.fill * body.sensorWidth * slant) /
        Math.max(subject.length * Math.sin((aspect * Math.PI) / 180), subject.span);
      for (const instant of instants) {
        const sun = sunAt(spot, instant);
        const lightAngle = angleBetween(sun.azimuth, back);
        const flankLit = angleBetween(sun.azimuth, towards) > 90;
        const total =
          lightFactor(sun.geometricAltitude, lightAngle, flankLit) *
          reachFactor(reach, needed) *
          aspectFactor(aspect) *
          hazeFactor(slant, sun.geometricAltitude, elevation);
        if (total > best) best = total;
      }
    }
  }
  return best;
}
