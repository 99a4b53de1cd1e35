import * as v from 'valibot';
import type { RunwayFlag } from './types';

/** Raised whenever an older program would misread the file: the app and its catalogue are built together. */
export const catalogueFormat = 1;

/** Runway ends are whole millionths of a degree (0.1 m), heights and lengths whole feet: what the data hold. */
export const perDegree = 1e6;
/** An airfield's own position only says where the map shall go: 11 m serve, and save a tenth of the file. */
export const placesPerDegree = 1e4;

/** Order of the kinds in the file: append only. */
export const flagKinds: readonly RunwayFlag['kind'][] = [
  'zero-length',
  'length-off',
  'at-thresholds',
  'far-away',
  'ends-swapped',
  'designator-off',
];

/** Which ends of a runway the data locate, as in the `located` column. */
export const locatedEnds = [
  [false, false],
  [true, true],
  [true, false],
  [false, true],
] as const;

// One pass without an object a number: the schema library's own list check takes longer than parsing the file.
const isWhole = (n: unknown): boolean => Number.isInteger(n);
const wholes = v.custom<readonly number[]>(
  (x) => Array.isArray(x) && x.every(isWhole),
  'expected whole numbers',
);
const wholesOrNull = v.custom<readonly (number | null)[]>(
  (x) => Array.isArray(x) && x.every((n) => n === null || isWhole(n)),
  'expected whole numbers or null',
);
const texts = v.array(v.string());

/**
 * The catalogue as it is stored: columns, since rows take twice the bytes. Columns of text are lines joined by
 * line feeds. `runs` are pairs (value, how often). Coordinates of airfields are differences from the airfield
 * before, those of ends from their airfield; heights of ends are differences from their airfield's.
 */
export const catalogueFileSchema = v.object({
  format: v.literal(catalogueFormat),
  source: v.object({ package: v.string(), version: v.string(), licence: v.string(), credit: v.string() }),
  builtBy: v.string(),
  airfields: v.object({
    kindRuns: wholes,
    regions: texts,
    regionRuns: wholes,
    names: v.string(),
    towns: v.string(),
    icao: v.string(),
    iata: v.string(),
    local: v.string(),
    lat: wholes,
    lng: wholes,
    elevation: wholes,
    runways: wholes,
  }),
  surfaces: texts,
  runways: v.object({ length: wholes, width: wholes, surface: wholes, located: wholes }),
  ends: v.object({
    designators: v.string(),
    lat: wholes,
    lng: wholes,
    elevation: wholesOrNull,
    displaced: wholes,
  }),
  /** Triples: place of the runway, place in `flagKinds`, figure (m or degrees, 0 for none). */
  flags: wholes,
  uses: texts,
  /** Triples: place of the airfield, place in `uses`, kHz. */
  frequencies: wholes,
});
export type CatalogueFile = v.InferOutput<typeof catalogueFileSchema>;
