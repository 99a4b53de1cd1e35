import type { ElevationGrid } from '../../figures/sight/terrain';
import { allSpotFigures, spotFigures } from '../../figures/spot-figures';
import type { SpotFigures } from '../../figures/types';
import { focalLengthsAlong } from '../../figures/spot/focal-lengths-along';
import { outlookOf } from '../../figures/outlook';
import { Scratch } from '../../figures/scratch';
import { pathsOf, type OtherPaths } from '../../figures/traffic/paths';
import type { Contents } from '../../survey/contents';
import type { Position } from '../../survey/document';
import { drawings } from '../../survey/drawings';
import { readSpotProperties, type StandingSpot } from '../../survey/schema/standing-spot';
import type { Selection } from '../view.svelte';
import type { Day } from './day.svelte';
import type { WantedPaths } from './wanted-paths.svelte';

interface Ground {
  readonly contents: Contents;
  readonly terrain: ElevationGrid | null;
  readonly otherPaths: OtherPaths | undefined;
}

/** What is seen of the aircraft: their paths, and the spots' figures of them. */
export class Sights {
  readonly #survey: Ground;
  readonly #day: Day;
  readonly #wanted: WantedPaths;
  readonly #selection: Selection;
  /** Room to work in for all spots, one after the other. */
  readonly #scratch = new Scratch();

  constructor(survey: Ground, day: Day, wanted: WantedPaths, selection: Selection) {
    this.#survey = survey;
    this.#day = day;
    this.#wanted = wanted;
    this.#selection = selection;
  }

  /** The paths that are drawn and looked at. */
  readonly paths = $derived.by(() => {
    const { contents, terrain, otherPaths } = this.#survey;
    return pathsOf(contents, this.#wanted.filter, terrain, otherPaths);
  });
  readonly outlook = $derived.by(() => outlookOf(this.#survey.contents, this.#survey.terrain));

  /** Figures of every spot at moment A and B, in the survey's order. */
  readonly spots = $derived.by(() => {
    const { contents, terrain } = this.#survey;
    const { instantA, instantB } = this.#day;
    const figures = allSpotFigures(contents, this.paths, [instantA, instantB], terrain, this.#scratch);
    return contents.spots.map((spot, i) => {
      const [a, b] = figures[i] ?? [];
      if (!a || !b) throw new Error('expected figures for two moments');
      return { spot, a, b };
    });
  });

  /** What a spot at a position would have at moment A and B, as the tool would set it: before there is one. */
  from(position: Position): {
    readonly spot: StandingSpot;
    readonly a: SpotFigures;
    readonly b: SpotFigures;
  } {
    const { properties } = drawings['standing-spot'];
    const spot = { id: '', position, ...readSpotProperties(properties, () => undefined) };
    const { instantA, instantB } = this.#day;
    const figures = spotFigures(spot, this.paths, this.outlook, [instantA, instantB], this.#scratch);
    const [a, b] = figures;
    if (!a || !b) throw new Error('expected figures for two moments');
    return { spot, a, b };
  }

  readonly selected = $derived.by(() => this.spots.find((s) => s.spot.id === this.#selection.id) ?? null);

  /** Needed focal length along each drawn path from the selected spot, in mm, infinite where it is out of reach; null without a spot. */
  readonly focalLengths = $derived.by(() => {
    const spot = this.selected;
    return spot ? this.paths.map((path, i) => focalLengthsAlong(path, spot.a.paths[i])) : null;
  });
}
