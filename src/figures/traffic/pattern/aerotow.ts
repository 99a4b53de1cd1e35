import type { Subject } from '../../../survey/schema/subject';
import { aerotow } from './practice';
import { departureEnds } from '../departure';
import { noseAttitudeOf } from '../nose-attitude';
import { pavementAt, planeFrom, type EndGeometry } from '../runway-geometry';
import type { PathSamples } from '../samples';
import { passSamples } from './passing';
import { trackOf } from './track';

/** Behind a tug: a run along the runway, then straight on at the shallow climb of the two of them. */
export function aerotowSamples(geometry: EndGeometry, subject: Subject): PathSamples {
  const run = Math.min(aerotow.run, geometry.length);
  const half = subject.height / 2;
  const track = trackOf({ u: 0, v: 0, du: 1, dv: 0 }, [{ ahead: geometry.length + departureEnds / 2 }]);
  return passSamples(planeFrom(geometry, 0), track, geometry.elevation, {
    heightAt: (way) =>
      pavementAt(geometry, Math.min(way, run)) + half + aerotow.gradient * Math.max(0, way - run),
    speedAt: (way) => aerotow.speed * Math.sqrt(Math.max(0, Math.min(1, way / run))),
    attitudeAt: (slope) => noseAttitudeOf(subject, Math.min(0, slope)),
    onGround: (way) => way <= run,
  });
}
