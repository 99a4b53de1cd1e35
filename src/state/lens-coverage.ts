import { lensCoverage, type LensCoverage } from '../figures/optics/lens-coverage';
import type { Derived } from './derived.svelte';

/** What the lenses of the kit cover of all that the survey's spots see of the paths that are shown, at both moments. */
export const coverageOf = ({
  contents,
  day,
  sights,
}: Pick<Derived, 'contents' | 'day' | 'sights'>): LensCoverage =>
  lensCoverage(contents, sights.paths, sights.outlook, [day.instantA, day.instantB]);
