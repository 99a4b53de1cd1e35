import type { Contents } from '../../survey/contents';
import type { ElevationGrid } from '../sight/terrain';
import { otherPaths } from './other-paths';
import { pathsOf, type Path, type PathFilter } from './paths';

/** All paths of a survey in order: those of `pathsOf`, then what else is flown. */
export const everyPath = (contents: Contents, wanted: PathFilter, grid: ElevationGrid | null): Path[] =>
  pathsOf(contents, wanted, grid, otherPaths);
