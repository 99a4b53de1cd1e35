import type { Contents } from '../../survey/contents';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import type { Subject } from '../../survey/schema/subject';
import { dateAt } from '../../time/local-time';
import { mayStand } from '../access/may-stand';
import { verdictFor } from '../optics/verdict';
import { outlookOf } from '../outlook';
import { standingOf, type Standing } from '../plan/standing';
import { Scratch } from '../scratch';
import type { ElevationGrid } from '../sight/terrain';
import { lensToTake } from '../summary/spot-summary';
import type { Path } from '../traffic/paths';
import type { Verdict } from '../types';
import { readRow, type RowReading } from '../when/light-row';
import type { StillView } from '../when/still-view';
import { stillViewsOf } from '../when/still-views';

/** The best place for something that flies at one time. */
export interface BestPlace {
  readonly spot: StandingSpot;
  readonly path: Path;
  readonly reading: RowReading;
  readonly checkFirst: boolean;
  /** What the lens to take makes of it; null without a lens or a focal length. */
  readonly lens: Verdict | null;
}

/** Looks for the best of a survey's spots; views of a path from a spot are kept from one question to the next. */
export class BestPlaces {
  readonly #contents: Contents;
  readonly #terrain: ElevationGrid | null;
  readonly #views = new Map<string, StillView | null>();
  readonly #standings = new Map<string, Standing>();
  readonly #scratch = new Scratch();

  constructor(contents: Contents, terrain: ElevationGrid | null) {
    this.#contents = contents;
    this.#terrain = terrain;
  }

  /** Along any of these paths of a subject at an instant (ms since 1970, UTC); null where nothing is worth a picture. */
  best(subject: Subject, paths: readonly Path[], instant: number): BestPlace | null {
    const { spots, kit, body } = this.#contents;
    let best: Omit<BestPlace, 'lens'> | null = null;
    for (const path of paths)
      for (const spot of spots) {
        const standing = this.#standing(spot, instant);
        const view = standing === 'nobody' ? null : this.#view(subject, path, spot, instant);
        if (!view?.usable || !view.inSight) continue;
        const reading = readRow(view, spot.position, instant);
        if (reading.score.total > (best?.reading.score.total ?? 0))
          best = { spot, path, reading, checkFirst: standing === 'check-first' };
      }
    if (!best) return null;
    const { focalLength } = best.reading;
    const verdicts =
      focalLength === null ? [] : kit.lenses.map((lens) => verdictFor(lens, focalLength, body, kit.fill));
    return { ...best, lens: lensToTake(verdicts, kit.fill) };
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
