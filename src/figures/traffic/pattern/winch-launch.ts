import type { Position } from '../../../survey/document';
import type { WinchRun } from '../../../survey/schema/flying';
import type { Subject } from '../../../survey/schema/subject';
import { DEG, RAD } from '../../geometry/angles';
import { frameAt, groundLine } from '../../geometry/earth';
import { winchLaunch } from './practice';
import { longestFlown } from '../runway-geometry';
import type { PathSamples } from '../samples';
import { passSamples } from './passing';
import { trackOf } from './track';

/** m of the run on the ground. */
const groundRun = 40;
/** m flown level behind the release. */
const levelOff = 400;

/**
 * A launch from the first position of a winch run towards the winch at its last: a short run, round into the full climb,
 * and level from where the cable is let go. Null for a line without length. `ground`: m above mean sea level there.
 */
export function winchSamples(
  { line }: WinchRun,
  subject: Subject,
  ground: number,
  field: number,
): PathSamples | null {
  const [from, to] = [line[0], line[line.length - 1]] as [Position, Position];
  const { distance: cable, azimuth } = groundLine(from, to);
  if (azimuth === null || cable < 1 || cable > longestFlown) return null;
  const { climb, rotation, release, speed } = winchLaunch;
  const steepest = Math.tan(climb * RAD);
  const top = cable * release;
  const plane = {
    frame: frameAt(from),
    x: 0,
    y: 0,
    east: Math.sin(azimuth * RAD),
    north: Math.cos(azimuth * RAD),
  };
  const track = trackOf({ u: 0, v: 0, du: 1, dv: 0 }, [{ ahead: top + levelOff }]);
  /** m climbed, some m along: the slope grows evenly while it rotates. */
  const climbed = (way: number) => {
    const up = Math.max(0, Math.min(way, top) - groundRun);
    const round = Math.min(up, rotation);
    return (steepest * round * round) / (2 * rotation) + steepest * (up - round);
  };
  return passSamples(plane, track, field, {
    heightAt: (way) => ground + subject.height / 2 + climbed(way),
    speedAt: (way) => speed * Math.sqrt(Math.max(0, Math.min(1, way / groundRun))),
    attitudeAt: (slope) => Math.atan(slope) * DEG,
    onGround: (way) => way <= groundRun,
  });
}
