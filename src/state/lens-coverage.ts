import { lensCoverage, type LensCoverage } from '../figures/optics/lens-coverage';
import type { Derived } from './derived.svelte';

/** What the lenses of the kit cover of all that the survey's spots see of the paths that are shown, at both moments. */
export const coverageOf = ({ contents, paths, outlook, instantA, instantB }: Derived): LensCoverage =>
  lensCoverage(contents, paths, outlook, [instantA, instantB]);
