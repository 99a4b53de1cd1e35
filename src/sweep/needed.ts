import type { Contents } from '../survey/contents';
import { Memo } from '../survey/memo';
import type { SweepAsked } from './plan';

const kept = new Memo<Contents>();

/**
 * What workers need of a survey for a question: the page copies it for each of them, and a season of recorded flights, a log or past
 * winds, which no cell is judged by, are most of a large one. The same object while the survey and the flights named are the same.
 */
export function neededOf(contents: Contents, { names }: SweepAsked): Contents {
  // By a wind or a configuration: what decides may be anywhere in the survey.
  if (names === null) return contents;
  const flightPaths = contents.flightPaths.filter(({ id }) => names.includes(id));
  return kept.get([contents, flightPaths], () => ({
    ...contents,
    flightPaths,
    logEntries: [],
    movements: [],
    windRecord: null,
    problems: [],
  }));
}
