import { angleBetween, RAD, wrap180 } from '../../figures/geometry/angles';
import { groundLine, positionOf } from '../../figures/geometry/earth';
import type { Path } from '../../figures/traffic/paths';
import type { PathSamples } from '../../figures/traffic/samples';
import type { Position } from '../../survey/document';
import { Memo } from '../../survey/memo';

/** A path's track on the ground. */
export interface PathLine {
  /** One a sample. */
  readonly positions: readonly Position[];
  /** Samples that a line must pass through to look like the path: few on a straight, more in a turn. */
  readonly kept: readonly number[];
}

const kept = new Memo<PathLine>();

/** Built once a path: samples are shared between surveys until their runway changes. */
export const pathLine = ({ samples }: Path): PathLine => kept.get([samples], () => lineAlong(samples));

function lineAlong({ centre, count }: PathSamples): PathLine {
  const positions = Array.from({ length: count }, (_, i) =>
    positionOf([centre[3 * i] as number, centre[3 * i + 1] as number, centre[3 * i + 2] as number]),
  );
  return { positions, kept: keptOf(positions) };
}

/** Samples that may be left out on a straight: over 500 m a geodesic leaves the map's straight line by 2 cm. */
const longestStride = 25;
/** Degrees of turn that are drawn as a corner. */
const smallestTurn = 1;

function keptOf(positions: readonly Position[]): number[] {
  const last = positions.length - 1;
  const kept = [0];
  let course: number | null = null;
  for (let i = 1; i < last; i++) {
    const from = kept[kept.length - 1] as number;
    const ahead = groundLine(positions[i] as Position, positions[i + 1] as Position).azimuth;
    course ??= ahead;
    const turned = ahead !== null && course !== null && angleBetween(ahead, course) > smallestTurn;
    if (!turned && i - from < longestStride) continue;
    kept.push(i);
    course = ahead;
  }
  if (last > 0) kept.push(last);
  return kept;
}

/** The sample nearest to a position on the map: good for picking with a pointer, not a figure. */
export function nearestSample(path: Path, [lng, lat]: Position): number {
  const { positions } = pathLine(path);
  const narrow = Math.cos(lat * RAD);
  let nearest = 0;
  let least = Infinity;
  positions.forEach(([x, y], i) => {
    const east = wrap180(x - lng) * narrow;
    const apart = east * east + (y - lat) * (y - lat);
    if (apart >= least) return;
    least = apart;
    nearest = i;
  });
  return nearest;
}

/** The sample at a station, or nearest to it. Stations only grow or only shrink along a path, so halving finds it. */
export function sampleAtStation({ samples: { station: stations, count } }: Path, station: number): number {
  const sign = (stations[0] as number) <= (stations[count - 1] as number) ? 1 : -1;
  let [low, high] = [0, count - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (sign * ((stations[middle] as number) - station) <= 0) low = middle;
    else high = middle;
  }
  const off = (i: number) => Math.abs((stations[i] as number) - station);
  return off(high) < off(low) ? high : low;
}

/** Degrees from true north in which the aircraft flies at a sample. */
export function courseAt(path: Path, i: number): number {
  const { positions } = pathLine(path);
  const last = positions.length - 1;
  const from = positions[Math.max(0, Math.min(i, last - 1))] as Position;
  const to = positions[Math.min(last, Math.max(i + 1, 1))] as Position;
  return groundLine(from, to).azimuth ?? 0;
}
