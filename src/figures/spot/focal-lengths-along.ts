import type { Path } from '../traffic/paths';
import type { PathFromSpot } from '../types';

/** Needed focal length in mm at every sample of a path, infinite where it is out of the kit's reach, NaN where it is hidden. */
export function focalLengthsAlong(path: Path, seen: PathFromSpot | undefined): Float64Array {
  const focal = new Float64Array(path.samples.count).fill(Infinity);
  for (const run of seen?.sector.runs ?? []) focal.set(run.focalLengths, run.from);
  for (const { first, last } of seen?.hidden ?? []) focal.fill(NaN, first, last + 1);
  return focal;
}
