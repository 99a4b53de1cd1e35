import type { Contents } from '../../survey/contents';
import type { Movement } from '../../survey/schema/movement';
import type { EndRef } from '../../survey/schema/site';
import type { Subject } from '../../survey/schema/subject';
import type { ElevationGrid } from '../sight/terrain';
import { endName } from '../traffic/end-name';
import { pathsOf, type Path, type PathFilter } from '../traffic/paths';
import { endsOf, type EndFrom } from './ends-of';
import { BestPlaces, type BestPlace } from './best-places';
import { subjectNamed } from './subject-named';

export interface MovementFigures {
  readonly movement: Movement;
  /** ms since 1970, UTC. */
  readonly instant: number;
  readonly subject: Subject;
  /** Whether the subject is the movement's type or class, not the current one standing in for an unknown type. */
  readonly known: boolean;
  /** Ends that it may use, by name. */
  readonly ends: readonly string[];
  readonly endFrom: EndFrom;
  /** Null where nothing is worth a picture: no spot, out of reach, hidden or dark; and of a type that is not known. */
  readonly best: BestPlace | null;
}

/** The subject that stands for a movement: the survey's own, else that of a type known by name; null for none. */
export function subjectOf(movement: Movement, subjects: readonly Subject[]): Subject | null {
  const by = (key: string) => subjects.find((s) => s.key.toUpperCase() === key.toUpperCase()) ?? null;
  return (
    (movement.subject === null ? null : by(movement.subject)) ??
    (movement.type === '' ? null : subjectNamed(movement.type, subjects))
  );
}

/** Works out movements of one survey; views of a path from a spot are kept from one movement to the next. */
export class MovementLooks {
  readonly #contents: Contents;
  readonly #inUse: Readonly<Record<'arrivals' | 'departures', readonly EndRef[]>>;
  readonly #terrain: ElevationGrid | null;
  readonly #paths = new Map<string, Path | null>();
  readonly #places: BestPlaces;

  /** `inUse`: the ends chosen, for moments of which the survey tells no wind, or whose wind the ends do not follow. */
  constructor(
    contents: Contents,
    inUse: Readonly<Record<'arrivals' | 'departures', readonly EndRef[]>>,
    terrain: ElevationGrid | null,
  ) {
    this.#contents = contents;
    this.#inUse = inUse;
    this.#terrain = terrain;
    this.#places = new BestPlaces(contents, terrain);
  }

  /** One movement at an instant (ms since 1970, UTC). */
  figures(movement: Movement, instant: number): MovementFigures {
    const known = subjectOf(movement, this.#contents.subjects);
    // No type at all: the current subject stands in. A type that nobody knows is somebody's to choose first.
    const isNamed = movement.type !== '';
    const subject = known ?? this.#contents.subject;
    const { refs, from } = endsOf(movement, { ...this.#contents, subject }, this.#inUse, instant);
    return {
      movement,
      instant,
      subject,
      known: known !== null,
      ends: refs.flatMap((ref) => {
        const runway = this.#contents.runways.find((r) => r.id === ref.runway);
        return runway ? [endName(runway, ref.end)] : [];
      }),
      endFrom: from,
      best:
        isNamed && known === null
          ? null
          : this.#places.best(
              subject,
              refs.flatMap((ref) => this.#path(subject, ref, movement.use) ?? []),
              instant,
            ),
    };
  }

  #path(subject: Subject, ref: EndRef, use: Movement['use']): Path | null {
    const key = `${subject.key} ${ref.runway} ${ref.end} ${use}`;
    let path = this.#paths.get(key);
    if (path === undefined) {
      const contents = { ...this.#contents, subject };
      const wanted: PathFilter = (k, r, e) => k === use && r === ref.runway && e === ref.end;
      path = pathsOf(contents, wanted, this.#terrain)[0] ?? null;
      this.#paths.set(key, path);
    }
    return path;
  }
}
