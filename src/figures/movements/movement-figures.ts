import type { Contents } from '../../survey/contents';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import type { Movement } from '../../survey/schema/movement';
import type { EndRef } from '../../survey/schema/site';
import type { Subject } from '../../survey/schema/subject';
import { dateAt } from '../../time/local-time';
import { verdictFor } from '../optics/verdict';
import { mayStand } from '../access/may-stand';
import { standingOf, type Standing } from '../plan/standing';
import { Scratch } from '../scratch';
import type { ElevationGrid } from '../sight/terrain';
import { outlookOf } from '../outlook';
import { stillViewsOf } from '../when/still-views';
import { lensToTake } from '../summary/spot-summary';
import { endName } from '../traffic/end-name';
import { pathsOf, type Path, type PathFilter } from '../traffic/paths';
import { typeNamed } from './find-types';
import { endsOf, type EndFrom } from './ends-of';
import type { Verdict } from '../types';
import { readRow, type RowReading } from '../when/light-row';
import type { StillView } from '../when/still-view';

/** The best place for one movement. */
export interface BestPlace {
  readonly spot: StandingSpot;
  readonly path: Path;
  readonly reading: RowReading;
  readonly checkFirst: boolean;
  /** What the lens to take makes of it; null without a lens or a focal length. */
  readonly lens: Verdict | null;
}

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
    (movement.type === '' ? null : (by(movement.type) ?? typeNamed(movement.type)?.subject ?? null))
  );
}

/** Works out movements of one survey; views of a path from a spot are kept from one movement to the next. */
export class MovementLooks {
  readonly #contents: Contents;
  readonly #inUse: Readonly<Record<'arrivals' | 'departures', readonly EndRef[]>>;
  readonly #terrain: ElevationGrid | null;
  readonly #views = new Map<string, StillView | null>();
  readonly #paths = new Map<string, Path | null>();
  readonly #standings = new Map<string, Standing>();
  readonly #scratch = new Scratch();

  /** `inUse`: the ends chosen, for moments of which the survey tells no wind, or whose wind the ends do not follow. */
  constructor(
    contents: Contents,
    inUse: Readonly<Record<'arrivals' | 'departures', readonly EndRef[]>>,
    terrain: ElevationGrid | null,
  ) {
    this.#contents = contents;
    this.#inUse = inUse;
    this.#terrain = terrain;
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
      best: isNamed && known === null ? null : this.#best(movement, subject, refs, instant),
    };
  }

  /** Nobody stands where it is shut at that time. What else counts is a matter of the date: asked once a spot and date. */
  #standing(spot: StandingSpot, instant: number): Standing {
    if (!mayStand(spot, this.#contents, instant).open) return 'nobody';
    const key = `${spot.id} ${dateAt(instant, this.#contents.site.timeZone)}`;
    let standing = this.#standings.get(key);
    if (standing === undefined) {
      standing = standingOf(spot, this.#contents, instant);
      this.#standings.set(key, standing);
    }
    return standing;
  }

  #best(movement: Movement, subject: Subject, refs: readonly EndRef[], instant: number): BestPlace | null {
    const { spots, kit, body } = this.#contents;
    let best: Omit<BestPlace, 'lens'> | null = null;
    for (const ref of refs) {
      const path = this.#path(subject, ref, movement.use);
      if (!path) continue;
      for (const spot of spots) {
        const standing = this.#standing(spot, instant);
        const view = standing === 'nobody' ? null : this.#view(subject, path, spot, instant);
        if (!view?.usable || !view.inSight) continue;
        const reading = readRow(view, spot.position, instant);
        if (reading.score.total > (best?.reading.score.total ?? 0))
          best = { spot, path, reading, checkFirst: standing === 'check-first' };
      }
    }
    if (!best) return null;
    const { focalLength } = best.reading;
    const verdicts =
      focalLength === null ? [] : kit.lenses.map((lens) => verdictFor(lens, focalLength, body, kit.fill));
    return { ...best, lens: lensToTake(verdicts, kit.fill) };
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

  #view(subject: Subject, path: Path, spot: StandingSpot, instant: number): StillView | null {
    const key = `${subject.key} ${path.ref.path} ${spot.id}`;
    let view = this.#views.get(key);
    if (view === undefined) {
      const outlook = outlookOf({ ...this.#contents, subject }, this.#terrain);
      view = stillViewsOf(spot, [path], outlook, instant, this.#scratch)[0] ?? null;
      this.#views.set(key, view);
    }
    return view;
  }
}
