import type { PathFilter } from '../../figures/traffic/paths';
import type { Shown } from '../view.svelte';
import type { Flow } from './flow.svelte';

/** Which paths are drawn and looked at: those of the ends in use, and what else was asked for. */
export class WantedPaths {
  readonly #flow: Flow;
  readonly #shown: Shown;

  constructor(flow: Flow, shown: Shown) {
    this.#flow = flow;
    this.#shown = shown;
  }

  readonly filter: PathFilter = $derived.by(() => {
    const { arrivals, departures } = this.#flow.inUse;
    const { circuits, everyEnd, onTheGround } = this.#shown.paths;
    const has = (list: typeof arrivals, runway: string | null, end: number | null) =>
      everyEnd || list.some((e) => e.runway === runway && e.end === end);
    return (kind: string, runway: string | null, end: number | null) => {
      if (kind === 'arrival' || kind === 'pattern') return has(arrivals, runway, end);
      if (kind === 'departure') return has(departures, runway, end);
      if (kind === 'circuit') return circuits && (has(arrivals, runway, end) || has(departures, runway, end));
      // What belongs to an end comes and goes with it; the rest is always flown.
      if (kind === 'pass' && runway !== null)
        return has(arrivals, runway, end) || has(departures, runway, end);
      if (kind === 'taxi' || kind === 'parked') return onTheGround;
      return true;
    };
  });
}
