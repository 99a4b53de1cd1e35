import type { ZoneAt } from '../survey/zones';

/**
 * In which time zone a place lies, for surveys that do not say: the borders are loaded when first asked for, and what
 * hangs on them is computed anew once they are there.
 */
export class SiteZones {
  readonly #load: () => Promise<ZoneAt>;
  #asked = false;
  #found = $state.raw<ZoneAt | null>(null);

  constructor(load: () => Promise<ZoneAt>) {
    this.#load = load;
  }

  readonly at: ZoneAt = (position) => {
    if (this.#found) return this.#found(position);
    if (!this.#asked) {
      this.#asked = true;
      void this.#load().then((found) => (this.#found = found));
    }
    return null;
  };
}
