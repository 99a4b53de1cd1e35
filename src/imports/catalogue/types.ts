import type { Position, Survey } from '../../survey/document';

/** In order of size: what a search shows first. */
export const airfieldKinds = [
  'large-airport',
  'medium-airport',
  'small-airport',
  'seaplane-base',
  'heliport',
] as const;
export type AirfieldKind = (typeof airfieldKinds)[number];

/** One airfield of the catalogue, as the data give it. Made when asked for: a search result holds a few. */
export interface Airfield {
  /** Its place in this catalogue: a key for lists on screen, not to be stored (the next build may differ). */
  readonly index: number;
  readonly name: string;
  /** Nearest town, empty when the data have none. */
  readonly town: string;
  /** ISO 3166-2 ("GB-ENG") and ISO 3166-1 ("GB"). */
  readonly region: string;
  readonly country: string;
  /** Four letters, or null. */
  readonly icao: string | null;
  /** Three letters, or null. */
  readonly iata: string | null;
  /** Every other code: national ones and those of navigation sets. */
  readonly localCodes: readonly string[];
  readonly kind: AirfieldKind;
  readonly position: Position;
  /** m above mean sea level. */
  readonly elevation: number;
  readonly frequencies: readonly CatalogueFrequency[];
  /** Every runway the data name; most of the small ones are not located (`ends` null). */
  readonly runways: readonly CatalogueRunway[];
}

export interface CatalogueFrequency {
  readonly use: string;
  readonly mhz: number;
}

export interface CatalogueRunway {
  /** Length and width in m as published, null when the data have none. */
  readonly length: number | null;
  readonly width: number | null;
  /** A word such as "asphalt"; empty when not known. */
  readonly surface: string;
  /** Both ends null: the data do not say where it lies. One null: they know one end only. */
  readonly ends: readonly [CatalogueEnd | null, CatalogueEnd | null];
  /** What contradicts itself in these rows, found when the catalogue was built. */
  readonly flags: readonly RunwayFlag[];
}

export interface CatalogueEnd {
  readonly designator: string;
  readonly position: Position;
  /** m above mean sea level, null when not known. */
  readonly elevation: number | null;
  /** m from the pavement end to the landing threshold. */
  readonly displaced: number;
}

/**
 * What contradicts itself. `measured`: m between the two points given. `away`: m from the airfield to the farther
 * one. `magnetic`: magnetic bearing in degrees of the line from end 0 to end 1 when the catalogue was built.
 */
export type RunwayFlag =
  | { readonly kind: 'zero-length' }
  | { readonly kind: 'length-off'; readonly measured: number }
  | { readonly kind: 'at-thresholds'; readonly measured: number }
  | { readonly kind: 'far-away'; readonly away: number }
  | { readonly kind: 'ends-swapped'; readonly magnetic: number }
  | { readonly kind: 'designator-off'; readonly magnetic: number };

/** What was found, and how: the best match comes first. */
export interface Match {
  readonly airfield: Airfield;
  readonly by: MatchTier;
}

/** How the typed text fits, best first. A much larger airfield may still go before a better fit. */
export type MatchTier = 'code' | 'code-prefix' | 'name-prefix' | 'word-prefix' | 'words' | 'inside';

/** The catalogue in memory: columns, read through `airfieldAt` and `searchCatalogue`. */
export interface Catalogue {
  /** Number of airfields. */
  readonly size: number;
  readonly airfieldAt: (index: number) => Airfield;
  /** For `searchCatalogue`: folded text of all airfields. */
  readonly searchText: SearchText;
}

export interface SearchText {
  /** One line an airfield, in catalogue order; see `foldForSearch`. */
  readonly text: string;
  /** Where each airfield's line begins. */
  readonly starts: Uint32Array;
  /** Place of its kind in `airfieldKinds`. */
  readonly sizes: Uint8Array;
}

export type CatalogueResult =
  { readonly ok: true; readonly catalogue: Catalogue } | { readonly ok: false; readonly reason: string };

/** A survey to start from, and what the user should know about it, in plain words. */
export interface StartedSurvey {
  readonly survey: Survey;
  readonly doubts: readonly string[];
}
