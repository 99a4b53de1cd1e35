import type { Contents } from '../../survey/contents';
import type { Position } from '../../survey/document';
import { Memo } from '../../survey/memo';
import type { Problem } from '../../survey/problems';
import { groundLine } from '../geometry/earth';
import { middleOf } from '../geometry/middle-of';
import { lookedAt, mostRecordedPaths } from '../traffic/looked-at';
import { longestFlown } from '../traffic/runway-geometry';

/** m below which two positions are one place, as paths have it. */
const onePlace = 1e-3;

/** Whether anything moves along a line; found at its first leg, so a track of a day costs nothing. */
const hasLength = (line: readonly Position[]): boolean =>
  line.some((position, i) => i > 0 && groundLine(line[i - 1] as Position, position).distance >= onePlace);

/** Key: the line. Bound: one length a line. Life: the line's. */
const lengths = new Memo<number>();

const lengthOf = (line: readonly Position[]): number =>
  lengths.get([line], () =>
    line.reduce((sum, position, i) => sum + groundLine(line[i - 1] ?? position, position).distance, 0),
  );

const aside = (id: string, reason: string): Problem => ({ id, reason, used: false });

/** The lines of which all positions are in one place. */
const inOnePlace = (
  things: readonly { readonly id: string; readonly line: readonly Position[] }[],
  what: string,
): Problem[] =>
  things
    .filter(({ line }) => !hasLength(line))
    .map(({ id }) =>
      aside(
        id,
        `All positions of the ${what} are in one place. Drag one away, or delete the ${what.split(' ').at(-1)}.`,
      ),
    );

/** What is drawn and has no meaning as a path: it is kept, nothing is computed from it, and that is said. */
export function placeProblems({
  flightPaths,
  taxiRoutes,
  aprons,
  displayLines,
  winchRuns,
  crowdLines,
}: Pick<
  Contents,
  'flightPaths' | 'taxiRoutes' | 'aprons' | 'displayLines' | 'winchRuns' | 'crowdLines'
>): Problem[] {
  // What was put aside by hand is nobody's surprise.
  const beyond =
    flightPaths.filter(({ source, fromSpots }) => source === 'drawn' || fromSpots !== false).length -
    lookedAt(flightPaths).length;
  return [
    ...(beyond > 0
      ? [
          {
            id: null,
            reason: `${beyond} more recorded flights: what really flies is learned from all of them, ${mostRecordedPaths} are looked at from the spots one by one. Select a flight to choose it.`,
            used: true,
          },
        ]
      : []),
    ...inOnePlace(flightPaths, 'flight path'),
    ...inOnePlace(displayLines, 'display line'),
    ...inOnePlace(winchRuns, 'winch run'),
    ...inOnePlace(crowdLines, 'crowd line'),
    ...inOnePlace(taxiRoutes, 'taxi route'),
    ...taxiRoutes.flatMap(({ id, line }) => {
      const length = lengthOf(line);
      return length > longestFlown
        ? [
            aside(
              id,
              `The taxi route is ${Math.round(length / 1000)} km long, which no taxi route is. Check its positions.`,
            ),
          ]
        : [];
    }),
    ...aprons
      .filter(({ rings }) => !middleOf(rings[0] ?? []))
      .map(({ id }) =>
        aside(id, 'The corners of the apron enclose no area. Drag one away, or delete the apron.'),
      ),
  ];
}
