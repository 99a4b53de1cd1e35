import { isRounded, type OtherPaths } from '../figures/traffic/paths';
import type { Contents } from '../survey/contents';

/** Whether a survey has anything of what `otherPaths` builds. */
const has = ({ runways, flightPaths, displayLines, helipads, winchRuns }: Contents): boolean =>
  displayLines.length + helipads.length + winchRuns.length > 0 ||
  flightPaths.some(isRounded) ||
  runways.some(({ patterns }) => patterns.length > 0);

/**
 * What else is flown: displays, breaks, helicopters. Its builders are loaded when a survey first has such, and what hangs
 * on them is computed anew once they are there.
 */
export class OtherFlying {
  readonly #load: () => Promise<OtherPaths>;
  #asked = false;
  #found = $state.raw<OtherPaths | null>(null);

  constructor(load: () => Promise<OtherPaths>) {
    this.#load = load;
  }

  readonly paths: OtherPaths = (contents, wanted, elevation, terrain) => {
    if (!has(contents)) return [];
    if (this.#found) return this.#found(contents, wanted, elevation, terrain);
    if (!this.#asked) {
      this.#asked = true;
      void this.#load().then((found) => (this.#found = found));
    }
    return [];
  };
}
