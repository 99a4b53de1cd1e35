import type { Derived } from '../state/derived.svelte';
import type { SurveyDocument } from '../state/document.svelte';
import type { Look } from '../state/look.svelte';
import type { Preferences } from '../state/preferences.svelte';
import type { Terrain } from '../state/terrain.svelte';
import type { View } from '../state/view.svelte';
import type { Position } from '../survey/document';
import { freshFeatureId } from '../survey/ids';
import type { Airfields } from '../ports/airfields';
import type { App } from '../ui/app-context';
import type { BaseMaps } from '../ports/base-maps';
import type { Files } from '../ports/files';
import type { GroundHeights } from '../ports/ground-heights';
import type { GroundPlan } from '../ports/ground-plan';
import type { MapControl } from '../ports/map-control';
import type { PastWinds } from '../ports/past-winds';
import type { PlanFiles } from '../ports/plan-files';
import type { Program } from '../ports/program';
import type { Tables } from '../ports/tables';
import type { WeatherReader } from '../ports/weather';
import type { Imports } from '../ports/imports';
import { formatsFor } from '../ui/formats';
import type { MovementLists } from '../ports/movement-lists';

/** Degrees round a ground plan's middle within which a survey is drawn on it. */
const planWithin = 0.2;

/** What the panels are handed by context. */
export class SunsideApp implements App {
  readonly #plans: readonly (GroundPlan & { readonly near: Position })[];
  /** Set by the map's component once the map is there. */
  map = $state.raw<MapControl | null>(null);

  constructor(
    readonly document: SurveyDocument,
    readonly view: View,
    readonly derived: Derived,
    readonly files: Files,
    readonly airfields: Airfields,
    readonly tables: Tables,
    readonly weather: WeatherReader,
    readonly pastWinds: PastWinds,
    readonly movements: MovementLists,
    readonly imports: Imports,
    readonly bases: BaseMaps,
    readonly planFiles: PlanFiles,
    readonly terrain: Terrain,
    readonly ground: GroundHeights,
    readonly preferences: Preferences,
    readonly look: Look,
    readonly program: Program,
    plans: readonly (GroundPlan & { readonly near: Position })[],
  ) {
    this.#plans = plans;
  }

  readonly format = $derived.by(() => formatsFor(this.preferences.values));

  readonly plan = $derived.by(() => {
    const [lng, lat] = this.derived.contents.site.reference;
    return (
      this.#plans.find(
        ({ near }) => Math.abs(near[0] - lng) < planWithin && Math.abs(near[1] - lat) < planWithin,
      ) ?? null
    );
  });

  newId(): string {
    return freshFeatureId(this.document.survey);
  }
}
