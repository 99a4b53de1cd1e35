import * as v from 'valibot';
import { codesSchema } from './codes';
import type { RunwayFlag } from './types';

/** Raised whenever an older program would misread the file: the app and its catalogue are built together. */
export const catalogueFormat = 3;

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

/** A line feed takes two bytes in JSON. */
export const lineEnd = ';';

const format = v.literal(catalogueFormat);

/**
 * The catalogue is stored in three files of one build: what a search needs, and what only starting a survey needs.
 * All are columns, since rows take twice the bytes. Columns that are lists of texts are written by `toDigits`. Airfields
 * stand by region and along the curve in it (`order.ts`); the other files count them in the order in which they are found.
 * Lines of text are each ended by `lineEnd`.
 */
export const catalogueFileSchema = v.object({
  format,
  source: v.object({ package: v.string(), version: v.string(), licence: v.string(), credit: v.string() }),
  builtBy: v.string(),
  airfields: v.object({
    kinds: texts,
    regions: codesSchema,
    /** How many airfields each region has. */
    regionCounts: wholes,
    /** In shorthand; an equals sign stands for the town where the name begins with it. */
    names: v.string(),
    /** In small letters; an equals sign stands for the town before. */
    towns: v.string(),
    icao: codesSchema,
    iata: codesSchema,
    local: codesSchema,
    /** How far along the curve each region begins, as differences; and each further airfield from the one before. */
    begins: texts,
    steps: texts,
    /** From the airfield before. */
    elevation: texts,
    /** Pairs (runways, located ones), and of each airfield which. */
    runwayCounts: wholes,
    runways: texts,
  }),
});
export type CatalogueFile = v.InferOutput<typeof catalogueFileSchema>;

export const runwaysFileSchema = v.object({
  format,
  builtBy: v.string(),
  surfaces: texts,
  /** Feet; the most frequent first, since `width` says which of them. */
  widths: wholes,
  /** `width` has only those runways of which an end is located. */
  runways: v.object({
    /** Fifties of feet, and feet beyond: lengths are round, but not to the digits of `toDigits`. */
    fifties: texts,
    feet: texts,
    width: texts,
    surface: texts,
    located: texts,
  }),
  ends: v.object({
    designators: v.string(),
    /** From the airfield to the first end; of the second, what is left of that when both are added: an airfield lies in the middle. */
    lat: wholes,
    lng: wholes,
    /** From the airfield's. */
    elevation: wholesOrNull,
    displaced: wholes,
  }),
  /** By how much each one's runway is farther in the list than the one before, place in `flagKinds`, figure (m or degrees, 0 for none). */
  flags: v.object({ runways: wholes, kind: texts, figure: wholes }),
});
export type RunwaysFile = v.InferOutput<typeof runwaysFileSchema>;

export const frequenciesFileSchema = v.object({
  format,
  builtBy: v.string(),
  uses: texts,
  frequencies: v.object({
    /** By how much each one's airfield is farther in the list than the one before. */
    airfields: wholes,
    /** Places in `uses`. */
    use: texts,
    khz: wholes,
  }),
});
export type FrequenciesFile = v.InferOutput<typeof frequenciesFileSchema>;
