import type { PathSamples } from './samples';

/** Index of the sample of a path that is nearest to a station, the first of two alike. */
export function indexAtStation(
  { station: stations, count }: Pick<PathSamples, 'station' | 'count'>,
  station: number,
): number {
  let index = 0;
  for (let i = 1; i < count; i++) {
    if (Math.abs((stations[i] as number) - station) < Math.abs((stations[index] as number) - station))
      index = i;
  }
  return index;
}
