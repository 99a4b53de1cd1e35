import type { ElevationGrid } from '../../figures/sight/terrain';
import { allSpotFigures, lookingFromSpots, spotFigures } from '../../figures/spot-figures';
import type { SpotFigures } from '../../figures/types';
import { focalLengthsAlong } from '../../figures/spot/focal-lengths-along';
import { outlookOf, raisingSurroundings } from '../../figures/outlook';
import { Scratch } from '../../figures/scratch';
import { buildingPaths, pathsOf, type OtherPaths } from '../../figures/traffic/paths';
import type { Contents } from '../../survey/contents';
import type { Position } from '../../survey/document';
import { drawings } from '../../survey/drawings';
import { readSpotProperties, type StandingSpot } from '../../survey/schema/standing-spot';
import type { Selection, Shown } from '../view.svelte';
import type { Day } from './day.svelte';
import type { Flow } from './flow.svelte';

interface Ground {
  readonly contents: Contents;
  readonly terrain: ElevationGrid | null;
  readonly otherPaths: OtherPaths | undefined;
}

/** What is seen of the aircraft: their paths, and the spots' figures of them. */
export class Sights {
  readonly #survey: Ground;
  readonly #day: Day;
  readonly #flow: Flow;
  readonly #selection: Selection;
  readonly #shown: Shown;
  /** Room to work in for all spots, one after the other. */
  readonly #scratch = new Scratch();

  constructor(
    survey: Ground,
    day: Day,
    flow: Flow,
    { selection, shown }: { readonly selection: Selection; readonly shown: Shown },
  ) {
    this.#survey = survey;
    this.#day = day;
    this.#flow = flow;
    this.#selection = selection;
    this.#shown = shown;
  }

  readonly #wanted = $derived.by(() => {
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
  /** The paths that are drawn and looked at. */
  readonly paths = $derived.by(() => {
    const { contents, terrain, otherPaths } = this.#survey;
    return pathsOf(contents, this.#wanted, terrain, otherPaths);
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

  /** Works out what contents that are to be shown next will be asked for: shown then, it is found remembered. */
  *ahead(contents: Contents): Generator<void> {
    const { terrain, otherPaths } = this.#survey;
    const { instantA, instantB } = this.#day;
    const paths = yield* buildingPaths(contents, this.#wanted, terrain, otherPaths);
    yield* raisingSurroundings(contents, terrain);
    yield* lookingFromSpots(contents, paths, [instantA, instantB], terrain, this.#scratch);
  }

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
