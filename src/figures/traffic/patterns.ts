import type { Pattern, PatternKind } from '../../survey/schema/flying';
import type { Subject } from '../../survey/schema/subject';
import { gliderApproach, gliderCircuit, wideCircuit } from './pattern/practice';
import { aerotowSamples } from './pattern/aerotow';
import { breakSamples } from './pattern/break';
import { circlingSamples } from './pattern/circling';
import { offsetSamples } from './pattern/offset-approach';
import { racetrackSamples } from './pattern/racetrack';
import type { EndGeometry } from './runway-geometry';
import type { PathSamples } from './samples';

/** `field`: m above mean sea level; `place`: which aircraft of a stream, from 0. */
type Builder = (
  geometry: EndGeometry,
  subject: Subject,
  field: number,
  pattern: Pattern,
  place: number,
) => PathSamples;

interface PatternRow {
  /** As people say it behind the end: "09 initial and break". */
  readonly word: string;
  /** Whether it ends in a landing, its stations counting down to the threshold; else it begins at the pavement's end. */
  readonly lands: boolean;
  /** Whether each aircraft of a stream has a path of its own. */
  readonly streams: boolean;
  readonly build: Builder;
}

/** What else is flown at a runway's end: a builder each. */
export const patterns: Readonly<Record<PatternKind, PatternRow>> = {
  break: { word: 'initial and break', lands: true, streams: true, build: breakSamples },
  'wide-circuit': {
    word: 'wide circuit',
    lands: true,
    streams: false,
    build: (geometry, subject, field, pattern) =>
      racetrackSamples(geometry, subject, field, pattern, wideCircuit),
  },
  offset: { word: 'offset approach', lands: true, streams: false, build: offsetSamples },
  circling: { word: 'circling approach', lands: true, streams: false, build: circlingSamples },
  glider: {
    word: 'glider circuit',
    lands: true,
    streams: false,
    build: (geometry, subject, field, pattern) =>
      racetrackSamples(
        geometry,
        { ...subject, approachAngle: subject.approachAngle ?? gliderApproach },
        field,
        pattern,
        gliderCircuit,
      ),
  },
  aerotow: { word: 'aerotow', lands: false, streams: false, build: aerotowSamples },
};

/** How many of a stream are looked at, one path each. */
export const streamOf = ({ pattern, aircraft }: Pattern): number =>
  patterns[pattern].streams ? Math.round(aircraft) : 1;
