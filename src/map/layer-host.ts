import type { LayerSpec, Spec } from './base/base-parts';

/** What anything that lies under the survey needs of the map library: a source and a layer, put in and taken out. */
export interface LayerHost {
  addSource(id: string, source: Spec): void;
  /** A source or layer that is not there is none to remove. */
  removeSource(id: string): void;
  /** `isOnPaper`: its colours are the sheet's, and are turned into those of the look. */
  addLayer(layer: LayerSpec, before: string, isOnPaper: boolean): void;
  removeLayer(id: string): void;
}
