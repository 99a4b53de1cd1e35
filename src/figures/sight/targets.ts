import { dot, type Frame } from '../geometry/earth';
import { Memo } from '../../survey/memo';
import type { PathSamples } from '../traffic/samples';
import { siteCoordinates } from './site-frame';

/** What of an aircraft is looked for: its wheels, its centre and its fin tip, in this order. */
export const pointsOfAircraft = 3;

/** Where those points are along a path. */
export interface Targets {
  readonly count: number;
  /** East, north and height above mean sea level in m, in the site frame: nine numbers a sample. */
  readonly points: Float64Array;
}

const kept = new Memo<Targets>();

/**
 * Wheels (0, 0, -H/2), centre and fin tip (-0.45 L, 0, H/2) of a subject, turned to track, nose attitude and bank
 * (design, section 3). `length` and `height` in m.
 */
export const targetsOf = (samples: PathSamples, length: number, height: number, frame: Frame): Targets =>
  kept.get([samples, length, height, frame], () => targetsAlong(samples, length, height, frame));

function targetsAlong(samples: PathSamples, length: number, height: number, frame: Frame): Targets {
  const { count, centre, forward, attitude, bank, headingKnown } = samples;
  // Facing nobody knows where, it has its fin over its middle.
  const finBack = headingKnown ? 0.45 * length : 0;
  const points = new Float64Array(3 * pointsOfAircraft * count);
  for (let i = 0, k = 0; i < count; i++, k += 3) {
    const at = [centre[k] as number, centre[k + 1] as number, centre[k + 2] as number] as const;
    const ahead = [forward[k] as number, forward[k + 1] as number, forward[k + 2] as number] as const;
    const [x, y, z] = siteCoordinates(frame, at);
    const [e, n] = [dot(ahead, frame.east), dot(ahead, frame.north)];
    const level = Math.hypot(e, n) || 1;
    const [sin, cos] = [Math.sin(attitude[i] as number), Math.cos(attitude[i] as number)];
    const [sinBank, cosBank] = [Math.sin(bank[i] as number), Math.cos(bank[i] as number)];
    // m ahead of, left of and above the centre. With the right wing down the top leans to the right.
    const half = height / 2;
    const wheels = [half * cosBank * sin, half * sinBank, -half * cosBank * cos] as const;
    const fin = [-finBack * cos - wheels[0], -wheels[1], -finBack * sin - wheels[2]] as const;
    [wheels, [0, 0, 0] as const, fin].forEach(([forwards, left, upwards], p) => {
      points.set(
        [x + (forwards * e - left * n) / level, y + (forwards * n + left * e) / level, z + upwards],
        3 * (pointsOfAircraft * i + p),
      );
    });
  }
  return { count, points };
}
