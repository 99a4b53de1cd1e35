import { problemsOf } from '../../figures/checks/problems';
import { declination } from '../../figures/geometry/magnetic';
import { runwayFigures } from '../../figures/runway-figures';
import { fieldElevation } from '../../figures/traffic/paths';
import type { Contents } from '../../survey/contents';
import type { Problem } from '../../survey/problems';
import type { Day } from './day.svelte';

/** What the airfield itself measures, and what is odd about its survey. */
export class Airfield {
  readonly #survey: { readonly contents: Contents; readonly openingProblems: readonly Problem[] };
  readonly #day: Day;

  constructor(
    survey: { readonly contents: Contents; readonly openingProblems: readonly Problem[] },
    day: Day,
  ) {
    this.#survey = survey;
    this.#day = day;
  }

  /** Magnetic declination at moment A, degrees, east positive. */
  readonly declination = $derived.by(() => {
    const { contents } = this.#survey;
    return declination(contents.site.reference, fieldElevation(contents), this.#day.instantA);
  });
  /** One entry a runway of the contents, null for one without direction. */
  readonly runways = $derived.by(() => {
    const { contents } = this.#survey;
    return contents.runways.map((r) => runwayFigures(r, fieldElevation(contents), this.#day.instantA));
  });
  readonly problems = $derived.by(() => [
    ...this.#survey.openingProblems,
    ...problemsOf(this.#survey.contents, this.runways, this.#day.instantA),
  ]);
}
