import type { Contents } from '../../survey/contents';
import type { CrowdLine, DisplayLine, Helipad, Pattern, WinchRun } from '../../survey/schema/flying';
import type { FlightPath } from '../../survey/schema/places';
import type { EndIndex, Runway } from '../../survey/schema/runway';
import type { Subject } from '../../survey/schema/subject';
import { Memo } from '../../survey/memo';
import { compassPoint } from '../geometry/compass';
import { groundAt } from '../sight/ground';
import type { Terrain } from '../sight/terrain';
import { endName, endPath } from './end-name';
import type { Formation } from './formation';
import { displaySamples, passWords } from './pattern/display';
import { helipadPasses, helipadSamples } from './pattern/helipad';
import { roundedSamples } from './pattern/published-path';
import { winchSamples } from './pattern/winch-launch';
import { isRounded, type Path, type PathFilter } from './paths';
import { patterns, streamOf } from './patterns';
import { endGeometry } from './runway-geometry';
import type { PathSamples } from './samples';

/** Keyed by what a path follows; of past surveys nothing stays. */
const kept = new Memo<readonly Path[]>({ each: 24 });

const together = ({ aircraft, spacing }: Formation): Pick<Path, 'formation'> =>
  aircraft > 1 ? { formation: { aircraft: Math.round(aircraft), spacing } } : {};

const named = (path: Omit<Path, 'samples'>, samples: PathSamples | null): readonly Path[] =>
  samples ? [{ ...path, samples }] : [];

/** What else is flown at a runway's end: each of a stream by itself. Several of one kind are numbered behind it. */
const patternPaths = (
  runway: Runway,
  pattern: Pattern,
  again: number,
  subject: Subject,
  elevation: number,
): readonly Path[] =>
  kept.get([runway, pattern, again, subject, elevation], () => {
    const geometry = endGeometry(runway, pattern.end, elevation);
    if (!geometry) return [];
    const row = patterns[pattern.pattern];
    const of = streamOf(pattern);
    return Array.from({ length: of }, (_, place): Path => {
      const which = [...(again > 0 ? [again + 1] : []), ...(of > 1 ? [`no${place + 1}`] : [])].join('-');
      return {
        ref: {
          path: [endPath(runway, pattern.end), pattern.pattern, which]
            .filter((part) => part !== '')
            .join('/'),
          kind: row.lands ? 'pattern' : 'pass',
          runway: runway.id,
          end: pattern.end,
        },
        name: `${endName(runway, pattern.end)} ${row.word}${of > 1 ? `, no. ${place + 1} of ${of}` : ''}`,
        samples: row.build(geometry, subject, elevation, pattern, place),
        // Until it breaks the whole stream is in the first one's picture.
        ...(place === 0 ? together({ ...pattern, aircraft: of }) : {}),
      };
    });
  });

/** The passes along a display line, both ways. */
const displayPaths = (
  display: DisplayLine,
  crowdLines: readonly CrowdLine[],
  subject: Subject,
  elevation: number,
): readonly Path[] =>
  kept.get([display, crowdLines, subject, elevation], () =>
    display.passes.flatMap((pass) =>
      (['forward', 'backward'] as const).flatMap((direction) =>
        named(
          {
            ref: { path: `${display.id}/${pass}/${direction}`, kind: 'pass', runway: null, end: null },
            name: `${display.name || 'Display line'} ${passWords[pass]}${direction === 'forward' ? '' : ', the other way'}`,
            ...together(display),
          },
          displaySamples(display, pass, direction, crowdLines, subject, elevation),
        ),
      ),
    ),
  );

/** The courses in which helicopters come to a pad: its own, else those in which the longest runway's open ends land. */
interface Course {
  readonly degrees: number | null;
  readonly runway: string | null;
  readonly end: EndIndex | null;
}

function coursesOf({ courses }: Helipad, runways: readonly Runway[], elevation: number): readonly Course[] {
  if (courses.length > 0) return courses.map((degrees) => ({ degrees, runway: null, end: null }));
  const ends = runways.flatMap((runway) =>
    ([0, 1] as const).flatMap((end) => {
      const geometry = runway.ends[end].closed ? null : endGeometry(runway, end, elevation);
      return geometry ? [geometry] : [];
    }),
  );
  const longest = Math.max(...ends.map(({ length }) => length));
  const into = ends.find(({ length }) => length === longest)?.runway;
  const of = ends.filter(({ runway }) => runway === into);
  return of.length > 0
    ? of.map(({ bearing, end, runway }) => ({ degrees: bearing, runway: runway.id, end }))
    : [{ degrees: null, runway: null, end: null }];
}

const padWords = { approach: 'approach', hover: 'hover', departure: 'departure' } as const;

const helipadPaths = (
  pad: Helipad,
  runways: readonly Runway[],
  subject: Subject,
  elevation: number,
  terrain: Terrain | null,
): readonly Path[] =>
  kept.get([pad, runways, subject, elevation, terrain], () => {
    const ground = pad.elevation ?? groundAt(pad.position, runways, elevation, terrain).elevation;
    return coursesOf(pad, runways, elevation).flatMap(({ degrees, runway, end }) =>
      helipadPasses.flatMap((pass) => {
        const on = degrees === null ? '' : ` to the ${compassPoint(degrees)}`;
        const course = degrees === null ? 'any' : String(Math.round(degrees)).padStart(3, '0');
        return named(
          {
            ref: { path: `${pad.id}/${course}/${pass}`, kind: 'pass', runway, end },
            name: `${pad.name || 'Helipad'} ${padWords[pass]}${on}`,
          },
          helipadSamples(pad, pass, degrees, subject, ground, elevation),
        );
      }),
    );
  });

const winchPaths = (
  run: WinchRun,
  runways: readonly Runway[],
  subject: Subject,
  elevation: number,
  terrain: Terrain | null,
): readonly Path[] =>
  kept.get([run, runways, subject, elevation, terrain], () => {
    const [from] = run.line;
    if (!from) return [];
    const { elevation: ground } = groundAt(from, runways, elevation, terrain);
    return named(
      {
        ref: { path: `${run.id}/launch`, kind: 'pass', runway: null, end: null },
        name: `${run.name || 'Winch'} launch`,
      },
      winchSamples(run, subject, ground, elevation),
    );
  });

/** A drawn path that is flown by its waypoints. */
const publishedPath = (flight: FlightPath, subject: Subject, elevation: number): readonly Path[] =>
  kept.get([flight, subject, elevation], () =>
    named(
      {
        ref: { path: flight.id, kind: 'flight-path', runway: null, end: null },
        name: flight.name || 'flight path',
      },
      roundedSamples(flight, subject, elevation),
    ),
  );

type Given = Pick<
  Contents,
  'flightPaths' | 'runways' | 'displayLines' | 'crowdLines' | 'helipads' | 'winchRuns' | 'subject'
>;

/**
 * What else is flown, in order: drawn paths that are rounded, the patterns of every end that is not closed, passes along display lines, helicopters
 * at their pads (for subjects that are some), winch launches (for gliders).
 */
export function otherPaths(
  { flightPaths, runways, displayLines, crowdLines, helipads, winchRuns, subject }: Given,
  wanted: PathFilter,
  elevation: number,
  terrain: Terrain | null,
): Path[] {
  const paths: Path[] = [];
  const add = (made: readonly Path[]) =>
    paths.push(...made.filter(({ ref }) => wanted(ref.kind, ref.runway, ref.end)));
  const rounded = flightPaths.filter(isRounded);
  for (const flight of rounded) add(publishedPath(flight, subject, elevation));
  for (const runway of runways)
    runway.patterns.forEach((pattern, i) => {
      if (runway.ends[pattern.end].closed) return;
      const again = runway.patterns
        .slice(0, i)
        .filter((p) => p.pattern === pattern.pattern && p.end === pattern.end).length;
      add(patternPaths(runway, pattern, again, subject, elevation));
    });
  for (const display of displayLines) add(displayPaths(display, crowdLines, subject, elevation));
  if (subject.propulsion === 'rotor')
    for (const pad of helipads) add(helipadPaths(pad, runways, subject, elevation, terrain));
  if (subject.propulsion === 'none')
    for (const run of winchRuns) add(winchPaths(run, runways, subject, elevation, terrain));
  kept.keepOnly([...rounded, ...runways, ...displayLines, ...helipads, ...winchRuns]);
  return paths;
}
