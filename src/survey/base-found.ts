/** A piece of the vector base map as its tiles have it: cut at their edges, and of one feature one piece a tile. */
export interface BaseFeature {
  /** The layer of the tiles that it is in. */
  readonly layer: string;
  readonly properties: Readonly<Record<string, unknown>>;
  readonly geometry: { readonly type: string; readonly coordinates?: unknown };
}

/** What the base map says of the ground that is on the screen. */
export interface BaseFound {
  /** The layers that its tiles have. */
  readonly layers: readonly string[];
  readonly zoom: number;
  readonly features: readonly BaseFeature[];
}
