import type { Contents } from '../survey/contents';
import { problemsOf } from './checks/problems';
import { runwayFigures } from './runway-figures';
import { grounded } from './sight/grounded';
import type { ElevationGrid } from './sight/terrain';
import { allSpotFigures } from './spot-figures';
import { fieldElevation, pathsOf, type PathFilter } from './traffic/paths';
import type { Figures } from './types';

/** All figures of a survey for one instant (ms since 1970, UTC): what the `figures` command prints. */
export function figuresFor(
  contents: Contents,
  instant: number,
  wanted: PathFilter = () => true,
  terrain: ElevationGrid | null = null,
): Figures {
  const elevation = fieldElevation(grounded(contents, terrain));
  const runways = contents.runways.map((runway) => runwayFigures(runway, elevation, instant));
  const paths = pathsOf(contents, wanted, terrain);
  return {
    problems: problemsOf(grounded(contents, terrain), runways, instant),
    runways: runways.filter((r) => r !== null),
    spots: allSpotFigures(contents, paths, [instant], terrain).flat(),
  };
}
