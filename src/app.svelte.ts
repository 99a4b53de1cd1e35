import type { Derived } from './state/derived.svelte';
import type { SurveyDocument } from './state/document.svelte';
import type { View } from './state/view.svelte';
import { freshId } from './survey/ids';
import type { Airfields, App, Files, MapControl } from './ui/app-context';

/** What the panels are handed by context. */
export class SunsideApp implements App {
  /** Set by the map's component once the map is there. */
  map = $state.raw<MapControl | null>(null);

  constructor(
    readonly document: SurveyDocument,
    readonly view: View,
    readonly derived: Derived,
    readonly files: Files,
    readonly airfields: Airfields,
  ) {}

  newId(): string {
    return freshId(new Set(this.document.survey.features.map((f) => f.id)));
  }
}
