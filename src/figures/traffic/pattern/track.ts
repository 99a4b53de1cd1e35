import { RAD } from '../../geometry/angles';

/** A place on a track in a plane, and the unit direction in which it is passed: `u` m ahead and `v` m to the left of where the plane begins. */
export interface TrackPlace {
  readonly u: number;
  readonly v: number;
  readonly du: number;
  readonly dv: number;
  /** One over the radius of the turn in m, positive to the left; 0 straight ahead. */
  readonly curvature: number;
}

/** Straight on for some m, or a turn by some degrees (positive to the left) at a radius in m. */
export type Step = { readonly ahead: number } | { readonly turn: number; readonly radius: number };

/** A track of straight legs and arcs, one joining the other without a corner. */
export interface Track {
  /** m along it. */
  readonly length: number;
  /** The place some m along; straight on before its beginning and beyond its end. */
  readonly at: (distance: number) => TrackPlace;
}

/** Where a step leads from a place, some m into it. */
function stepped(from: TrackPlace, step: Step, s: number): TrackPlace {
  const { u, v, du, dv } = from;
  if ('ahead' in step) return { u: u + du * s, v: v + dv * s, du, dv, curvature: 0 };
  const left = Math.sign(step.turn);
  const { radius } = step;
  const [sin, cos] = [Math.sin(s / radius), Math.cos(s / radius)];
  // The centre of the turn lies to the left or the right of where it begins.
  const [nu, nv] = [-left * dv, left * du];
  return {
    u: u + radius * (du * sin + nu * (1 - cos)),
    v: v + radius * (dv * sin + nv * (1 - cos)),
    du: du * cos + nu * sin,
    dv: dv * cos + nv * sin,
    curvature: left / radius,
  };
}

const lengthOf = (step: Step): number =>
  'ahead' in step ? step.ahead : Math.abs(step.turn) * RAD * step.radius;

/** The track that begins at a place in a direction and goes on by steps. */
export function trackOf(begin: Omit<TrackPlace, 'curvature'>, steps: readonly Step[]): Track {
  const parts: { from: number; start: TrackPlace; step: Step }[] = [];
  let [from, start]: [number, TrackPlace] = [0, { ...begin, curvature: 0 }];
  for (const step of steps) {
    const length = lengthOf(step);
    if (length <= 0) continue;
    parts.push({ from, start, step });
    start = stepped(start, step, length);
    from += length;
  }
  const end = { ...start, curvature: 0 };
  const length = from;
  return {
    length,
    at: (distance) => {
      if (distance < 0) return stepped({ ...begin, curvature: 0 }, { ahead: 1 }, distance);
      if (distance > length) return stepped(end, { ahead: 1 }, distance - length);
      const part = parts.findLast((p) => p.from <= distance);
      return part ? stepped(part.start, part.step, distance - part.from) : end;
    },
  };
}
