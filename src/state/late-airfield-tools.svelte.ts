/** What only the magnetic model and the checks can say. */
export type AirfieldTools = typeof import('./airfield-tools');

/**
 * The magnetic model and the checks of a survey: the first screen stands without them. They are loaded when first asked
 * for, and what hangs on them is computed anew once they are there.
 */
export class LateAirfieldTools {
  readonly #load: () => Promise<AirfieldTools>;
  #asked = false;
  #found = $state.raw<AirfieldTools | null>(null);
  #failed = $state.raw(false);

  constructor(load: () => Promise<AirfieldTools>) {
    this.#load = load;
  }

  /** Null until they are there. */
  get found(): AirfieldTools | null {
    if (!this.#asked) {
      this.#asked = true;
      void this.#load().then(
        (found) => (this.#found = found),
        () => (this.#failed = true),
      );
    }
    return this.#found;
  }
  /** They did not come: whoever reads the problems is told. */
  get failed(): boolean {
    return this.#failed;
  }
}
