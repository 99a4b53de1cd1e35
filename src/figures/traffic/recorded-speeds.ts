import { recordedWindow } from '../practice';
import { groundLine } from '../geometry/earth';
import type { Position } from '../../survey/document';

/** m/s beyond which two places of a record do not belong together: nobody flies three times as fast as sound here. */
const fastest = 1000;
/** Positions to either side that a speed is taken from at most. */
const mostAside = 12;

/**
 * Ground speed in m/s on each leg of a recorded path, NaN where its times do not tell one. Clocks of recorders count
 * whole seconds and positions jump, so a leg alone says little: the slope of way over time round it is taken over some
 * seconds, by the median of the slopes between all places in it (Theil 1950, Sen 1968). `times`: ms, one a position, or none at all.
 */
export function recordedSpeeds(line: readonly Position[], times: readonly number[]): Float64Array {
  if (times.length !== line.length) return new Float64Array(Math.max(0, line.length - 1)).fill(NaN);
  const way = new Float64Array(line.length);
  for (let i = 1; i < line.length; i++)
    way[i] = (way[i - 1] as number) + groundLine(line[i - 1] as Position, line[i] as Position).distance;
  const speeds = new Float64Array(Math.max(0, line.length - 1));
  for (let i = 0; i < speeds.length; i++) {
    const [from, to] = windowRound(i, times);
    const slopes: number[] = [];
    for (let a = from; a < to; a++)
      for (let b = a + 1; b <= to; b++) {
        const seconds = ((times[b] as number) - (times[a] as number)) / 1000;
        if (seconds > 0) slopes.push(((way[b] as number) - (way[a] as number)) / seconds);
      }
    const speed = medianOf(slopes);
    speeds[i] = speed < fastest ? speed : NaN;
  }
  return speeds;
}

/** The positions round the leg from `i` to `i + 1` between which some seconds pass. */
function windowRound(i: number, times: readonly number[]): readonly [from: number, to: number] {
  let [from, to] = [i, i + 1];
  const short = () => (times[to] as number) - (times[from] as number) < recordedWindow * 1000;
  while (short() && (from > 0 || to < times.length - 1)) {
    if (i - from >= mostAside && to - i - 1 >= mostAside) break;
    if (from > 0) from--;
    if (short() && to < times.length - 1) to++;
  }
  return [from, to];
}

function medianOf(values: number[]): number {
  if (values.length === 0) return NaN;
  const sorted = values.sort((a, b) => a - b);
  const half = (sorted.length - 1) / 2;
  return ((sorted[Math.floor(half)] as number) + (sorted[Math.ceil(half)] as number)) / 2;
}
