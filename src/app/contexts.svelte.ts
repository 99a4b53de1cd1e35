import type { Position } from '../survey/document';
import type { MapControl } from '../ports/map-control';
import type { GroundPlan } from '../ports/ground-plan';
import { Answers } from '../state/answers';
import type { Derived } from '../state/derived.svelte';
import type { SurveyDocument } from '../state/document.svelte';
import type { View } from '../state/view.svelte';
import type { Contexts, Furniture, Land, MapSeat, Reader } from '../ui/contexts';
import type { Box } from '../ui/box-of';
import { formatsFor } from '../ui/formats';

/** A ground plan, and the middle of what it shows. */
export type PlacedGroundPlan = GroundPlan & { readonly near: Position };

/** Degrees round a ground plan's middle within which a survey is drawn on it. */
const planWithin = 0.2;

/** What the page is made of: the open survey, what follows from it, and what stands behind the ports. */
export interface Parts extends Pick<
  Contexts,
  | 'files'
  | 'sources'
  | 'downloads'
  | 'program'
  | 'passing'
  | 'merging'
  | 'ways'
  | 'trips'
  | 'mine'
  | 'placeSearch'
  | 'learning'
  | 'own'
  | 'whereabouts'
  | 'visits'
> {
  readonly document: SurveyDocument;
  readonly view: View;
  readonly derived: Derived;
  readonly land: Omit<Land, 'groundPlan'>;
  readonly reader: Omit<Reader, 'format'>;
  readonly groundPlans: readonly PlacedGroundPlan[];
}

/** The parts as the components ask for them. */
export function contextsOf(parts: Parts): Contexts {
  const { document, view, derived, files, sources, downloads, program, passing, merging, placeSearch } =
    parts;
  return {
    editing: document,
    steps: document,
    figures: derived,
    inspected: derived.inspection,
    answers: new Answers(derived),
    view,
    notices: view,
    map: new EmptySeat(),
    reader: new PageReader(parts.reader),
    files,
    sources,
    land: new SurveyLand(parts.land, derived, parts.groundPlans),
    downloads,
    program,
    passing,
    merging,
    ways: parts.ways,
    trips: parts.trips,
    mine: parts.mine,
    placeSearch,
    learning: parts.learning,
    own: parts.own,
    whereabouts: parts.whereabouts,
    visits: parts.visits,
  };
}

/** Taken by the map's component once the map is there. */
class EmptySeat implements MapSeat {
  control = $state.raw<MapControl | null>(null);
  settled = $state.raw(false);
  tick = $state.raw(0);
  #boxes = $state.raw<Partial<Record<Furniture, Box | null>>>({});
  readonly furniture = $derived.by(() => Object.values(this.#boxes).filter((box) => box !== null));

  furnish(what: Furniture, box: Box | null): void {
    this.#boxes = { ...this.#boxes, [what]: box };
  }
}

class PageReader implements Reader {
  readonly look: Reader['look'];
  readonly preferences: Reader['preferences'];

  constructor({ look, preferences }: Omit<Reader, 'format'>) {
    this.look = look;
    this.preferences = preferences;
  }

  readonly format = $derived.by(() => formatsFor(this.preferences.values));
}

class SurveyLand implements Land {
  readonly bases: Land['bases'];
  readonly heights: Land['heights'];
  readonly terrain: Land['terrain'];
  readonly #derived: Pick<Derived, 'contents'>;
  readonly #groundPlans: readonly PlacedGroundPlan[];

  constructor(
    { bases, heights, terrain }: Omit<Land, 'groundPlan'>,
    derived: Pick<Derived, 'contents'>,
    groundPlans: readonly PlacedGroundPlan[],
  ) {
    this.bases = bases;
    this.heights = heights;
    this.terrain = terrain;
    this.#derived = derived;
    this.#groundPlans = groundPlans;
  }

  readonly groundPlan = $derived.by(() => {
    const [lng, lat] = this.#derived.contents.site.reference;
    const within = (a: number, b: number) => Math.abs(a - b) < planWithin;
    return this.#groundPlans.find(({ near }) => within(near[0], lng) && within(near[1], lat)) ?? null;
  });
}
