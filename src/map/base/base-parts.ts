import type { Credit } from '../../state/base-maps/ground';

/** A layer or a source of a base map, in the map library's own words: what a style says is not ours to type. */
export type Spec = Readonly<Record<string, unknown>>;
export type LayerSpec = Spec & {
  readonly id: string;
  readonly type: string;
  readonly paint?: Spec;
};

/** All that a base map puts under the survey. */
export interface BaseParts {
  readonly sources: Readonly<Record<string, Spec>>;
  /** In the order in which they are drawn. */
  readonly layers: readonly LayerSpec[];
  /** Drawn in the paper's own colours, which change with the look. */
  readonly isOnPaper: boolean;
  /** Address of the base's own glyphs; null where it has no text of its own fonts. */
  readonly glyphs: string | null;
  readonly sprites: readonly { readonly id: string; readonly url: string }[];
  readonly credit: Credit;
  /** To be called once when nothing of it is shown any more, by whoever has read it. */
  readonly close?: () => void;
}

/** In front of every source and layer of a base map: a name of its own cannot be one of the survey's. */
export const basePrefix = 'base:';

/** What is wrong with a base map that was reached, in words for the user. */
export class UnusableBase extends Error {}
