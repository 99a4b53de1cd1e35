import { recordedWindow } from '../practice';
import { groundLine } from '../geometry/earth';
import { medianIn } from '../geometry/median-in';
import type { Position } from '../../survey/document';

/** m/s beyond which two places of a record do not belong together: nobody flies three times as fast as sound here. */
const fastest = 1000;
/** Positions to either side that a speed is taken from at most. */
const mostAside = 12;
/** Pairs of the positions round a leg: its two ends, and those to either side. */
const mostPairs = ((2 * mostAside + 2) * (2 * mostAside + 1)) / 2;

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
  const slopes = new Float64Array(mostPairs);
  for (let i = 0; i < speeds.length; i++) {
    const [from, to] = windowRound(i, times);
    let count = 0;
    for (let a = from; a < to; a++)
      for (let b = a + 1; b <= to; b++) {
        const seconds = ((times[b] as number) - (times[a] as number)) / 1000;
        if (seconds > 0) slopes[count++] = ((way[b] as number) - (way[a] as number)) / seconds;
      }
    const speed = count === 0 ? NaN : medianIn(slopes.subarray(0, count));
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
