import { rollSeconds } from '../../practice';
import type { PathSamples } from '../samples';

/**
 * The same path with its bank reached by rolling: no aircraft is banked from one sample to the next. The bank of each
 * sample is the mean over the seconds that a roll takes, half of them before it and half after.
 */
export function rolledIn(samples: PathSamples): PathSamples {
  const { count, station, speed, bank } = samples;
  const rolled = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const reach = (rollSeconds / 2) * (speed[i] as number);
    const at = station[i] as number;
    let [sum, of] = [bank[i] as number, 1];
    for (const way of [-1, 1])
      for (let k = i + way; k >= 0 && k < count; k += way) {
        if (!(Math.abs((station[k] as number) - at) <= reach)) break;
        sum += bank[k] as number;
        of++;
      }
    rolled[i] = sum / of;
  }
  return { ...samples, bank: rolled };
}
