import { fieldForbidsPhotographs } from '../../figures/access/field-forbids-photographs';
import { statusOn } from '../../figures/access/status-on';
import { problemsOf } from '../../figures/checks/problems';
import { declination } from '../../figures/geometry/magnetic';
import { runwayFigures } from '../../figures/runway-figures';
import { grounded } from '../../figures/sight/grounded';
import type { ElevationGrid } from '../../figures/sight/terrain';
import type { Contents } from '../../survey/contents';
import type { Problem } from '../../survey/problems';
import type { Day } from './day.svelte';
import type { Sights } from './sights.svelte';

interface Survey {
  readonly contents: Contents;
  readonly openingProblems: readonly Problem[];
  readonly terrain: ElevationGrid | null;
}

/** What the airfield itself measures, and what is odd about its survey. */
export class Airfield {
  readonly #survey: Survey;
  readonly #day: Day;
  readonly #sights: Sights;

  constructor(survey: Survey, day: Day, sights: Sights) {
    this.#survey = survey;
    this.#day = day;
    this.#sights = sights;
  }

  /** m above mean sea level. A number, so that what hangs on it stays while it does. */
  readonly #elevation = $derived.by(() => this.#sights.outlook.fieldElevation);
  /** Magnetic declination at moment A, degrees, east positive. */
  readonly declination = $derived.by(() =>
    declination(this.#survey.contents.site.reference, this.#elevation, this.#day.instantA),
  );
  /** One entry a runway of the contents, null for one without direction. */
  readonly runways = $derived.by(() =>
    this.#survey.contents.runways.map((r) => runwayFigures(r, this.#elevation, this.#day.instantA)),
  );
  /** One entry a spot of the contents: its status on the day, after what was asked and answered. */
  readonly access = $derived.by(() => {
    const { date } = this.#day;
    return this.#survey.contents.spots.map((spot) => statusOn(spot.access, date));
  });
  readonly fieldForbids = $derived.by(() => fieldForbidsPhotographs(this.#survey.contents.rules));
  /** Ids of the spots where nobody may stand with a camera on the day, by their own standing or the field's rules. */
  readonly closedSpots: ReadonlySet<string> = $derived.by(() => {
    const { spots } = this.#survey.contents;
    const closed = spots.filter((_, i) => this.fieldForbids || this.access[i] === 'forbidden');
    return new Set(closed.map(({ id }) => id));
  });
  readonly problems = $derived.by(() => {
    const { contents, openingProblems, terrain } = this.#survey;
    return [...openingProblems, ...problemsOf(grounded(contents, terrain), this.runways, this.#day.instantA)];
  });
}
