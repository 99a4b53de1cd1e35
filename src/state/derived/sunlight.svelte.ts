import { chosenMoments, skyOf, skyStretches, solarNoon } from '../../figures/light/day-light';
import { litSide, litSpans } from '../../figures/light/lit-side';
import { sunAt } from '../../figures/light/sun';
import { sunTimes } from '../../figures/light/sun-times';
import type { Contents } from '../../survey/contents';
import type { Day } from './day.svelte';

/** The sun over the airfield through the day, and on which side of its runways it stands. */
export class Sunlight {
  readonly #survey: { readonly contents: Contents };
  readonly #day: Day;

  constructor(survey: { readonly contents: Contents }, day: Day) {
    this.#survey = survey;
    this.#day = day;
  }

  readonly #lng = $derived.by(() => this.#survey.contents.site.reference[0]);
  readonly #lat = $derived.by(() => this.#survey.contents.site.reference[1]);
  readonly sunTimes = $derived.by(() =>
    sunTimes([this.#lng, this.#lat], this.#day.span.from, this.#day.span.to),
  );
  readonly sky = $derived.by(() =>
    skyStretches([this.#lng, this.#lat], this.#day.span.from, this.#day.span.to),
  );
  readonly solarNoon = $derived.by(() =>
    solarNoon([this.#lng, this.#lat], this.#day.span.from, this.#day.span.to),
  );
  readonly chosenMoments = $derived.by(() => chosenMoments(this.sunTimes, this.solarNoon));
  /** The sun at the airfield at both moments. */
  readonly suns = $derived.by(() => {
    const at = (instant: number) => {
      const sun = sunAt([this.#lng, this.#lat], instant);
      return { sun, sky: skyOf(sun) };
    };
    return { a: at(this.#day.instantA), b: at(this.#day.instantB) };
  });
  readonly litSides = $derived.by(() =>
    this.#survey.contents.runways.map((runway) => ({
      runway: runway.id,
      a: litSide(runway, this.#day.instantA),
      b: litSide(runway, this.#day.instantB),
      spans: litSpans(runway, this.#day.span.from, this.#day.span.to),
    })),
  );
}
