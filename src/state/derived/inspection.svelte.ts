import { sightProfile } from '../../figures/sight/profile';
import { Scratch } from '../../figures/scratch';
import { inspectPath } from '../../figures/spot/inspect-path';
import type { Selection } from '../view.svelte';
import type { Day } from './day.svelte';
import type { Sights } from './sights.svelte';

/** The sample of a path that is inspected from the selected spot. */
export class Inspection {
  readonly #sights: Pick<Sights, 'paths' | 'outlook' | 'selected'>;
  readonly #day: Day;
  readonly #selection: Selection;
  readonly #scratch = new Scratch();

  constructor(sights: Pick<Sights, 'paths' | 'outlook' | 'selected'>, day: Day, selection: Selection) {
    this.#sights = sights;
    this.#day = day;
    this.#selection = selection;
  }

  /** The sample at both moments. */
  readonly sample = $derived.by(() => {
    const { inspected } = this.#selection;
    const { paths, outlook, selected } = this.#sights;
    const spot = selected?.spot;
    const path = paths.find((p) => p.ref.path === inspected?.path);
    if (!inspected || !spot || !path) return null;
    const at = (instant: number) =>
      inspectPath(spot, path, inspected.station, outlook, instant, this.#scratch);
    return { path, a: at(this.#day.instantA), b: at(this.#day.instantB) };
  });

  /** The side view along the line of sight to it; null while nobody looks at it. */
  readonly sightLine = $derived.by(() => {
    const spot = this.#sights.selected?.spot;
    if (!this.#selection.sightLine || !this.sample || !spot) return null;
    const { path, a } = this.sample;
    const index = path.samples.station.indexOf(a.station);
    const profile = sightProfile(spot, path, index, this.#sights.outlook, this.#day.instantA);
    return { path, index, sample: a, profile };
  });
}
