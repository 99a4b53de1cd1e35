import type { FlownStation } from '../../figures/flown/learn';

/** The picture's box in its own units. */
export const box = { width: 320, height: 110, left: 4, right: 4, top: 6, bottom: 20 } as const;

/** A height in m at a station in m. */
export interface At {
  readonly station: number;
  readonly height: number;
}

export interface BandShapes {
  /** From the 10th percentile to the 90th, the median, and the survey's own path. */
  readonly band: string;
  readonly middle: string;
  readonly path: string;
  /** Kilometres to be written under the picture, where they stand. */
  readonly marks: readonly { readonly x: number; readonly station: number }[];
  /** m, at the top of the picture. */
  readonly high: number;
}

/** m of stations that the picture shows at most. */
const shownTo = 6000;

/** Flights go from left to right: what is still to fly to a threshold grows to the left. */
export function bandShapes(
  stations: readonly FlownStation[],
  path: readonly At[],
  leftwards: boolean,
): BandShapes | null {
  const first = stations[0];
  const last = stations.at(-1);
  if (!first || !last || first === last) return null;
  const [from, to] = [first.station, Math.min(last.station, shownTo)];
  const own = path.filter(({ station }) => station >= from && station <= to);
  const heights = [...stations.flatMap(({ height }) => height), ...own.map(({ height }) => height)];
  const low = heights.reduce((a, b) => Math.min(a, b), 0);
  const high = heights.reduce((a, b) => Math.max(a, b), low + 10);
  const across = box.width - box.left - box.right;
  const down = box.height - box.top - box.bottom;
  const x = (station: number) => {
    const share = (station - from) / (to - from);
    return box.left + (leftwards ? 1 - share : share) * across;
  };
  const y = (height: number) => box.top + ((high - height) / (high - low)) * down;
  const line = (points: readonly At[]) =>
    points
      .map((p, i) => `${i === 0 ? 'M' : 'L'}${x(p.station).toFixed(1)} ${y(p.height).toFixed(1)}`)
      .join('');
  const at = (which: 0 | 1 | 2) =>
    stations.map(({ station, height }): At => ({ station, height: height[which] }));
  const marks = [];
  for (let station = Math.ceil(from / 2000) * 2000; station <= to; station += 2000)
    marks.push({ x: x(station), station });
  return {
    band: `${line([...at(2), ...at(0).toReversed()])}Z`,
    middle: line(at(1)),
    path: line(own),
    marks,
    high,
  };
}
