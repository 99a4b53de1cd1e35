import type { BaseFound } from '../survey/base-found';

/** What panels may ask of the map: mostly where to look. */
export interface MapControl {
  goTo(position: readonly [number, number], zoom?: number): void;
  /** Shows the whole survey. */
  fit(): void;
  /** Where a position is on the page, in CSS pixels of the map; null before the map is there. */
  project(position: readonly [number, number]): { readonly x: number; readonly y: number } | null;
  /** The position in the middle of the map. */
  centre(): readonly [number, number];
  /** What the base map's tiles have on the screen in some of their layers; null where no vector base map is shown. */
  baseFeatures(layers: readonly string[]): BaseFound | null;
  focus(): void;
  /** As if this key was pressed on the map: what a button does that stands for a key. */
  press(key: string): void;
  /** What the keys do on the map, for the list of short cuts. */
  readonly keys: readonly {
    readonly title: string;
    readonly lines: readonly {
      readonly keys: readonly string[];
      readonly words: string;
      readonly written?: readonly string[];
    }[];
  }[];
}
