import type { SpreadAt } from '../figures/flown/as-flown';
import { eyeAt } from '../figures/spot/eye-at';
import { lookedAt, mostRecordedPaths } from '../figures/traffic/looked-at';
import type { Sample } from '../figures/types';
import { lastAnswer } from '../survey/memo';
import type { Derived } from './derived.svelte';

type Tools = typeof import('./flown-tools');
type Needs = Pick<Derived, 'contents' | 'terrain' | 'sights' | 'flow'>;

/** What recorded flights change in the answers of a spot; their figures come when a survey first has any. */
export class FlownAnswers {
  readonly #figures: Needs;
  #tools = $state.raw<Tools | null>(null);
  #asked = false;

  constructor(figures: Needs) {
    this.#figures = figures;
  }

  /** Null until they are there; without the net, figures stay those of the path. */
  #load(): Tools | null {
    if (!this.#asked) {
      this.#asked = true;
      void import('./flown-tools').then(
        (tools) => (this.#tools = tools),
        () => (this.#asked = false),
      );
    }
    return this.#tools;
  }

  /** How far the flights that were learned from spread about a path at a sample; null where none were. */
  spreadAt(path: string, sample: Sample): SpreadAt | null {
    const { contents, sights, terrain } = this.#figures;
    if (!contents.runways.some(({ ends }) => ends.some(({ flown }) => flown))) return null;
    const found = sights.paths.find(({ ref }) => ref.path === path);
    return (found && this.#load()?.spreadAt(found, sample, contents, terrain)) ?? null;
  }

  /** Focal lengths in mm that eight of ten of them need from the selected spot. */
  focal(path: string, sample: Sample): { readonly shortest: number; readonly longest: number } | null {
    const { selected, paths } = this.#figures.sights;
    const spread = this.spreadAt(path, sample);
    const found = paths.find(({ ref }) => ref.path === path);
    if (!spread || !found || !selected) return null;
    return this.#load()?.focalAsFlown(spread, found, sample, eyeAt(selected.spot, selected.a.ground)) ?? null;
  }

  /** Whether a recorded flight is looked at from the spots, and whether all that can be are `chosen` by hand without it. */
  fromSpots(id: string): { readonly looked: boolean; readonly full: boolean; readonly most: number } {
    const { flightPaths } = this.#figures.contents;
    const looked = lookedAt(flightPaths).some((flight) => flight.id === id);
    const chosen = flightPaths.filter(({ source, fromSpots }) => source !== 'drawn' && fromSpots === true);
    return { looked, full: !looked && chosen.length >= mostRecordedPaths, most: mostRecordedPaths };
  }

  /** Recorded flights to an end that is not in use: worked out anew only when flights, runways or ends change. */
  readonly #passedOver = lastAnswer(
    (tools: Tools, ...given: Parameters<Tools['passedOver']>): ReadonlySet<string> =>
      tools.passedOver(...given),
  );
  passedOver(): ReadonlySet<string> {
    const { contents, flow, terrain } = this.#figures;
    if (!contents.flightPaths.some(({ source }) => source !== 'drawn')) return none;
    const tools = this.#load();
    const { site, runways, flightPaths } = contents;
    return tools
      ? this.#passedOver(tools, this.#given(site, runways, flightPaths), flow.inUse, terrain)
      : none;
  }
  /** The same object while nothing of it has changed. */
  readonly #given = lastAnswer(
    (
      site: Derived['contents']['site'],
      runways: Derived['contents']['runways'],
      flightPaths: Derived['contents']['flightPaths'],
    ) => ({ site, runways, flightPaths }),
  );
}

const none: ReadonlySet<string> = new Set();
