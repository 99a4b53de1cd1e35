import { momentsOf } from '../../figures/light/moments';
import type { Contents } from '../../survey/contents';

/** The day that is looked at and its two moments. `now` (ms since 1970) stands in for a date that the survey does not name. */
export class Day {
  readonly #survey: { readonly contents: Contents };
  readonly #now: () => number;

  constructor(survey: { readonly contents: Contents }, now: () => number) {
    this.#survey = survey;
    this.#now = now;
  }

  readonly #moments = $derived.by(() => momentsOf(this.#survey.contents, this.#now()));
  readonly timeZone = $derived.by(() => this.#moments.timeZone);
  readonly date = $derived.by(() => this.#moments.date);
  // Derived as plain numbers: what hangs on the day stays while an edit leaves it as it is.
  readonly #from = $derived.by(() => this.#moments.day.from);
  readonly #to = $derived.by(() => this.#moments.day.to);
  readonly span = $derived.by(() => ({ from: this.#from, to: this.#to }));
  /** The two moments as instants (ms since 1970, UTC). */
  readonly instantA = $derived.by(() => this.#moments.a);
  readonly instantB = $derived.by(() => this.#moments.b);
}
