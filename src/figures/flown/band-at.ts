import type { FlownBand } from '../../survey/schema/flown-band';

export interface FlownAt {
  /** m of the centre above the landing threshold: 10th, 50th, 90th percentile. */
  readonly height: readonly [low: number, middle: number, high: number];
  /** m to the right of the flight; null where flights are not on the runway's line. */
  readonly offset: readonly [left: number, middle: number, right: number] | null;
}

/** What flights do at a station, between the kept ones in a straight line; null beyond them. */
export function bandAt({ from, step, height, offset }: FlownBand, station: number): FlownAt | null {
  const at = (station - from) / step;
  const i = Math.min(Math.floor(at), height.length - 2);
  const [h0, h1] = [height[i], height[i + 1]];
  if (at < 0 || at > height.length - 1 || !h0 || !h1) return null;
  const t = at - i;
  const [o0, o1] = [offset[i] ?? null, offset[i + 1] ?? null];
  return { height: mixed(h0, h1, t), offset: o0 && o1 && mixed(o0, o1, t) };
}

type Three = readonly [number, number, number];
const mixed = (a: Three, b: Three, t: number): Three => [
  a[0] + (b[0] - a[0]) * t,
  a[1] + (b[1] - a[1]) * t,
  a[2] + (b[2] - a[2]) * t,
];
