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
  /** How many runways the data name, and how many of them can be drawn. */
  readonly runwayCount: number;
  readonly locatedCount: number;
}

/** An airfield with what the other two files say of it; null where a file could not be loaded. */
export interface AirfieldToStart extends Airfield {
  /** Every runway the data name; most of the small ones are not located (`ends` null). */
  readonly runways: readonly CatalogueRunway[] | null;
  readonly frequencies: readonly CatalogueFrequency[] | null;
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
  /** For the readers of the files that go with this one. */
  readonly fields: Fields;
}

/** A column of numbers: a list, or an array of one machine type, which takes a quarter of the time to fill. */
export type Numbers = ArrayLike<number>;

/** What the other files of one build count on: they hold differences from these. */
export interface Fields {
  /** The build that the files have in common. */
  readonly builtBy: string;
  /** Millionths of a degree, and feet above mean sea level. */
  readonly lat: Numbers;
  readonly lng: Numbers;
  readonly elevation: Numbers;
  /** Where each airfield's runways begin among all, one more than there are airfields. */
  readonly firstRunway: Numbers;
}

/** Runways or frequencies of an airfield, by its place in the catalogue. */
export type ByAirfield<T> = (index: number) => readonly T[];

export interface SearchText {
  /** One line an airfield, in catalogue order; see `foldForSearch`. */
  readonly text: string;
  /** Where each airfield's line begins. */
  readonly starts: Uint32Array;
  /** Place of its kind in `airfieldKinds`. */
  readonly sizes: Uint8Array;
}

export type Loaded<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly reason: string };

/** A survey to start from, and what the user should know about it, in plain words. */
export interface StartedSurvey {
  readonly survey: Survey;
  readonly doubts: readonly string[];
}
