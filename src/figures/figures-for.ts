import type { Contents } from '../survey/contents';
import { problemsOf } from './checks/problems';
import { runwayFigures } from './runway-figures';
import { outlookOf, spotFigures } from './spot-figures';
import { pathsOf, type PathFilter } from './traffic/paths';
import type { Figures } from './types';

/** All figures of a survey for one instant (ms since 1970, UTC): what the `figures` command prints. */
export function figuresFor(contents: Contents, instant: number, wanted: PathFilter = () => true): Figures {
  const runways = contents.runways.map((runway) => runwayFigures(runway, contents, instant));
  const paths = pathsOf(contents, wanted);
  const outlook = outlookOf(contents);
  return {
    problems: problemsOf(contents, runways, instant),
    runways: runways.filter((r) => r !== null),
    spots: contents.spots.flatMap((spot) => spotFigures(spot, paths, outlook, [instant])),
  };
}
