import type { Contents } from '../survey/contents';
import { problemsOf } from './checks/problems';
import { outlookOf } from './outlook';
import { runwayFigures } from './runway-figures';
import { Scratch } from './scratch';
import { grounded } from './sight/grounded';
import type { ElevationGrid } from './sight/terrain';
import { spotFigures } from './spot-figures';
import { everyPath } from './traffic/every-path';
import { fieldElevation, type Path, type PathFilter } from './traffic/paths';
import type { Figures, SpotFigures } from './types';

type FiguresBySpot = Omit<Figures, 'spots'> & { readonly spots: Generator<SpotFigures> };

/** All figures of a survey for one instant (ms since 1970, UTC); those of each spot are worked out when it is asked for. */
export function figuresBySpot(
  contents: Contents,
  instant: number,
  terrain: ElevationGrid | null,
  wanted: PathFilter = () => true,
): FiguresBySpot {
  const elevation = fieldElevation(grounded(contents, terrain));
  const runways = contents.runways.map((runway) => runwayFigures(runway, elevation, instant));
  const paths = everyPath(contents, wanted, terrain);
  return {
    problems: problemsOf(grounded(contents, terrain), runways, instant),
    runways: runways.filter((r) => r !== null),
    spots: spotBySpot(contents, paths, instant, terrain),
  };
}

function* spotBySpot(
  contents: Contents,
  paths: readonly Path[],
  instant: number,
  terrain: ElevationGrid | null,
): Generator<SpotFigures> {
  const outlook = outlookOf(contents, terrain);
  const scratch = new Scratch();
  for (const spot of contents.spots) yield* spotFigures(spot, paths, outlook, [instant], scratch);
}

/** The same with all spots: what the `figures` command prints. */
export function figuresFor(
  contents: Contents,
  instant: number,
  terrain: ElevationGrid | null,
  wanted: PathFilter = () => true,
): Figures {
  const { spots, ...figures } = figuresBySpot(contents, instant, terrain, wanted);
  return { ...figures, spots: [...spots] };
}
