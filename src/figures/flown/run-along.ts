import { hingeAt } from './hinge-at';
import { spreadOf, type Spread } from './percentile';
import { theilSen } from './theil-sen';
import { onLine, type Track } from './track';
import type { Way } from './way-of';

/**
 * One recorded flight along one end's line, in the terms of that end's path: stations as the path counts them (an
 * arrival's and a circuit's before the landing threshold, a departure's from the pavement end), in growing order.
 */
export interface RunAlong {
  readonly station: readonly number[];
  /** m of the centre above the landing threshold, and to the right of the flight (null while it is not on the line). */
  readonly height: readonly number[];
  readonly offset: readonly (number | null)[];
  /** m/s over the ground; null without times. */
  readonly speed: readonly (number | null)[];
  /** Degrees of the glide, and m of the centre above the threshold where its line crosses it; null under 1 km of it. */
  readonly glide: number | null;
  readonly crossing: number | null;
  /** The same of the wheels: above the height at which this flight rolled, so a wrong datum does no harm; null without a roll-out. */
  readonly wheels: number | null;
  /** m beyond the landing threshold at which it was down to stay; see `hingeAt`. */
  readonly touchdown: number | null;
  /** m from the pavement end at which it left the ground, by `hingeAt`; rise over run from there, null under 1 km of it. */
  readonly liftOff: number | null;
  readonly gradient: number | null;
}

/** Stations in m between which an approach is straight and stable enough to tell its angle; m that it takes. */
const glideFrom = 500;
const glideTo = 4000;
const leastFit = 1000;
/** m beyond which nothing is learned. */
export const learnedTo = 6000;

export const runAlong = (way: Way): RunAlong =>
  way.kind === 'departure' ? departed(way) : way.kind === 'arrival' ? arrived(way) : circled(way);

/** An arrival's final: from where it was last lined up to the end of its roll-out. */
function arrived(way: Way): RunAlong {
  const { track, geometry, down } = way;
  let first = down;
  while (first > 0 && (track.course[first - 1] as number) >= onLine) first--;
  const indices = range(track.count - 1, first).filter((i) => (track.course[i] as number) >= onLine);
  return along(track, indices, (i) => geometry.displaced - (track.along[i] as number), {
    ...landing(way, first),
    liftOff: null,
    gradient: null,
  });
}

/** A circuit: stations are what is still to fly to the threshold. */
function circled(way: Way): RunAlong {
  const { track, geometry, down } = way;
  let over = down;
  while (over > 0 && (track.along[over - 1] as number) > geometry.displaced) over--;
  const threshold = (track.flown[over] as number) - ((track.along[over] as number) - geometry.displaced);
  let first = down;
  while (first > 0 && (track.course[first - 1] as number) >= onLine) first--;
  const indices = range(track.count - 1, 0).filter((i) => i < down || (track.course[i] as number) >= onLine);
  return along(track, indices, (i) => threshold - (track.flown[i] as number), {
    ...landing(way, first),
    liftOff: null,
    gradient: null,
  });
}

function departed(way: Way): RunAlong {
  const { track, up } = way;
  let last = Math.max(up, 0);
  while (last < track.count - 1 && (track.course[last + 1] as number) >= onLine) last++;
  const indices = range(0, last).filter((i) => (track.course[i] as number) >= onLine);
  const climbing = indices.filter((i) => i > up && (track.along[i] as number) <= learnedTo + glideFrom);
  const far = at(climbing, track.along);
  const line = reach(far) < leastFit ? null : theilSen(far, at(climbing, track.low));
  const rises = line !== null && line.slope > 0;
  return along(track, indices, (i) => track.along[i] as number, {
    glide: null,
    crossing: null,
    wheels: null,
    touchdown: null,
    liftOff:
      up < 0
        ? null
        : (hingeAt(at(indices, track.along), abovePlane(way, indices), track.along[up] as number)?.at ??
          null),
    gradient: rises ? line.slope : null,
  });
}

function landing(way: Way, first: number) {
  const {
    track,
    down,
    geometry: { displaced },
  } = way;
  const onFinal = range(first, track.count - 1).filter((i) => {
    const station = displaced - (track.along[i] as number);
    return (
      station >= glideFrom && station <= glideTo && i < down + 1 && (track.course[i] as number) >= onLine
    );
  });
  const stations = onFinal.map((i) => displaced - (track.along[i] as number));
  const heights = onFinal.map((i) => track.height[i] as number);
  const line = reach(stations) < leastFit ? null : theilSen(stations, heights);
  const rolling = rollingHeight(track, down);
  return {
    glide: line && (Math.atan(line.slope) * 180) / Math.PI,
    crossing: line && line.intercept,
    wheels: line && rolling && line.intercept - rolling.median,
    touchdown: touchedDown(way, first),
  };
}

/** m of the centre above the pavement while it rolls: the later half of the stretch under 15 m. */
const rollingHeight = ({ count, low }: Track, down: number): Spread | null =>
  spreadOf(range(Math.floor((down + count) / 2), count - 1).map((i) => low[i] as number));

/**
 * m beyond the landing threshold. Looking back along the approach, so that the way grows from the ground into the air: where
 * its line meets the height of the roll-out, and beyond that as far as the heights are sure that it still floated.
 */
function touchedDown(way: Way, first: number): number | null {
  const { track, geometry, down } = way;
  if (down >= track.count) return null;
  const straight = range(first, track.count - 1).filter((i) => (track.course[i] as number) >= onLine);
  const [back, heights] = [at(straight, track.along).map((t) => -t), abovePlane(way, straight)];
  const hinge = hingeAt(back, heights, -(track.along[down] as number));
  if (hinge === null) return null;
  const sure = hinge.level + Math.max(leastFloat, 2 * hinge.apart);
  let last = hinge.at;
  for (const [k, here] of back.entries()) {
    if (here >= hinge.at) continue;
    if ((heights[k] as number) <= sure || hinge.at - here > longestFloat) break;
    last = here;
  }
  return -last - geometry.displaced;
}

/** m above the height of its roll-out at which an aircraft still flies, if recorders knew it; m of the longest float. CP. */
const leastFloat = 0.5;
const longestFloat = 900;

/** m above the plane through both ends of the runway: before its pavement begins, the ground is no part of it. */
function abovePlane({ track, geometry }: Way, indices: readonly number[]): readonly number[] {
  return indices.map((i) => (track.height[i] as number) - geometry.slope * (track.along[i] as number));
}

/** The points in the order of growing station; whatever turns back is passed over. */
function along(
  track: Track,
  indices: readonly number[],
  stationOf: (i: number) => number,
  told: Pick<RunAlong, 'glide' | 'crossing' | 'wheels' | 'touchdown' | 'liftOff' | 'gradient'>,
): RunAlong {
  const station: number[] = [];
  const height: number[] = [];
  const offset: (number | null)[] = [];
  const speed: (number | null)[] = [];
  for (const i of indices) {
    const here = stationOf(i);
    if (station.length > 0 && here <= (station.at(-1) as number)) continue;
    station.push(here);
    height.push(track.height[i] as number);
    offset.push((track.course[i] as number) >= onLine ? (track.offset[i] as number) : null);
    speed.push(speedAt(track, i));
  }
  return { station, height, offset, speed, ...told };
}

/** Over the points before and after: a single leg of a recorder that rounds to seconds says little. */
function speedAt({ seconds, flown, count }: Track, i: number): number | null {
  if (!seconds) return null;
  const [a, b] = [Math.max(0, i - 1), Math.min(count - 1, i + 1)];
  const time = (seconds[b] as number) - (seconds[a] as number);
  return time > 0 ? ((flown[b] as number) - (flown[a] as number)) / time : null;
}

const at = (indices: readonly number[], list: Float64Array) => indices.map((i) => list[i] as number);

const reach = (values: readonly number[]) =>
  values.length === 0 ? 0 : Math.max(...values) - Math.min(...values);

const range = (from: number, to: number) =>
  Array.from({ length: Math.abs(to - from) + 1 }, (_, k) => from + Math.sign(to - from) * k);
