import type { Position } from '../survey/document';
import { freshFeatureId } from '../survey/ids';
import type { App } from '../ui/app-context';
import type { GroundPlan } from '../ports/ground-plan';
import type { MapControl } from '../ports/map-control';
import { formatsFor } from '../ui/formats';

/** Degrees round a ground plan's middle within which a survey is drawn on it. */
const planWithin = 0.2;

/** What is handed in: the rest follows from it, or comes later. */
export type AppParts = Omit<App, 'format' | 'plan' | 'map' | 'newId'> & {
  readonly plans: readonly (GroundPlan & { readonly near: Position })[];
};

/** What the panels are handed by context. */
export class SunsideApp implements App {
  readonly document: App['document'];
  readonly view: App['view'];
  readonly derived: App['derived'];
  readonly files: App['files'];
  readonly airfields: App['airfields'];
  readonly tables: App['tables'];
  readonly weather: App['weather'];
  readonly pastWinds: App['pastWinds'];
  readonly movements: App['movements'];
  readonly imports: App['imports'];
  readonly bases: App['bases'];
  readonly planFiles: App['planFiles'];
  readonly terrain: App['terrain'];
  readonly ground: App['ground'];
  readonly preferences: App['preferences'];
  readonly look: App['look'];
  readonly program: App['program'];
  readonly #plans: AppParts['plans'];
  /** Set by the map's component once the map is there. */
  map = $state.raw<MapControl | null>(null);

  constructor(parts: AppParts) {
    this.document = parts.document;
    this.view = parts.view;
    this.derived = parts.derived;
    this.files = parts.files;
    this.airfields = parts.airfields;
    this.tables = parts.tables;
    this.weather = parts.weather;
    this.pastWinds = parts.pastWinds;
    this.movements = parts.movements;
    this.imports = parts.imports;
    this.bases = parts.bases;
    this.planFiles = parts.planFiles;
    this.terrain = parts.terrain;
    this.ground = parts.ground;
    this.preferences = parts.preferences;
    this.look = parts.look;
    this.program = parts.program;
    this.#plans = parts.plans;
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
