import { groundLine } from '../../figures/geometry/earth';
import type { Tally } from '../bring-in/tally';
import { practice } from '../practice';
import { isPlace } from '../osm/elements';
import type { Track, TrackPoint } from './track';

/** m within which two altitudes next to a zero make that zero credible. */
const nearZero = 60;

/**
 * The points of a recorded flight that say something, in parts without long gaps: no repeated positions, no times that
 * run backwards, no zeros where the recorder had no altitude (they become null).
 */
export function partsOfTrack({ points }: Track, tally: Tally): readonly (readonly TrackPoint[])[] {
  const credible = withoutFalseZeros(points);
  const zeros = credible.filter((p, i) => p !== points[i]).length;
  if (zeros > 0) tally.add('altitudes', 'they are 0 between others that are not', zeros);
  const parts: TrackPoint[][] = [];
  let part: TrackPoint[] = [];
  let before: Before | null = null;
  const cut = () => {
    if (part.length > 0) parts.push(part);
    part = [];
  };
  for (const point of credible) {
    if (!isPlace(...point.position) || (point.position[0] === 0 && point.position[1] === 0)) {
      tally.add('points', 'their coordinates are none, or 0, 0');
      continue;
    }
    if (before) {
      const t0: number | null = before.time;
      const t1 = point.time;
      if (t0 !== null && t1 !== null && t1 <= t0) {
        tally.add(
          'points',
          t1 === t0 ? 'there is one with the same time before' : 'their times run backwards',
        );
        continue;
      }
      const away = groundLine(before.position, point.position).distance;
      if (isGap(away, t0, t1)) cut();
      else if (away < leastStep) {
        tally.add('points', 'they repeat the position before');
        // The clock goes on while the aircraft stands, or while nothing new is received.
        before = { position: before.position, time: t1 ?? t0 };
        continue;
      }
    }
    part.push(point);
    before = point;
  }
  cut();
  return parts;
}

type Before = Pick<TrackPoint, 'position' | 'time'>;

/** m: the survey's seven decimals are a centimetre. */
const leastStep = 0.5;

const isGap = (away: number, t0: number | null, t1: number | null): boolean =>
  t0 !== null && t1 !== null ? t1 - t0 > practice.longGap * 1000 : away > practice.longJump;

function withoutFalseZeros(points: readonly TrackPoint[]): readonly TrackPoint[] {
  const known = points.filter((p) => p.altitude !== null && p.altitude !== 0);
  if (known.length === 0) return points;
  let before: number | null = null;
  const after: (number | null)[] = [];
  let next: number | null = null;
  for (let i = points.length - 1; i >= 0; i--) {
    after[i] = next;
    const altitude = points[i]?.altitude ?? null;
    if (altitude !== null && altitude !== 0) next = altitude;
  }
  return points.map((point, i) => {
    if (point.altitude !== 0) {
      if (point.altitude !== null) before = point.altitude;
      return point;
    }
    const near = [before, after[i] ?? null].filter((a) => a !== null);
    return near.some((a) => Math.abs(a) > nearZero) ? { ...point, altitude: null } : point;
  });
}
