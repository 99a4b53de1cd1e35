import * as v from 'valibot';
import type { RunwayFlag } from './types';

/** Raised whenever an older program would misread the file: the app and its catalogue are built together. */
export const catalogueFormat = 2;

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

const format = v.literal(catalogueFormat);

/**
 * The catalogue is stored in three files of one build: what a search needs, and what only starting a survey needs.
 * All are columns, since rows take twice the bytes. Columns of text are lines joined by line feeds. `runs` are pairs
 * (value, how often); `lat`, `lng` and `elevation` of airfields are written by `toDigits`. Coordinates of airfields
 * are differences from the airfield before, those of ends from their airfield; so are heights of ends.
 */
export const catalogueFileSchema = v.object({
  format,
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
    lat: texts,
    lng: texts,
    elevation: texts,
    runways: wholes,
    located: wholes,
  }),
});
export type CatalogueFile = v.InferOutput<typeof catalogueFileSchema>;

export const runwaysFileSchema = v.object({
  format,
  builtBy: v.string(),
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
});
export type RunwaysFile = v.InferOutput<typeof runwaysFileSchema>;

export const frequenciesFileSchema = v.object({
  format,
  builtBy: v.string(),
  uses: texts,
  /** Triples: place of the airfield, place in `uses`, kHz. */
  frequencies: wholes,
});
export type FrequenciesFile = v.InferOutput<typeof frequenciesFileSchema>;
