import type { Position } from './document';
import type { Shape } from './geometry';
import type { JsonObject } from './json';
import {
  readApronProperties,
  readFlightPathProperties,
  readGroundUseProperties,
  readNoGoProperties,
  readObstacleProperties,
  type Apron,
  type FlightPath,
  type GroundUse,
  type NoGoArea,
  type Obstacle,
  type TaxiRoute,
} from './schema/places';
import {
  readCrowdLineProperties,
  readDisplayLineProperties,
  readHelipadProperties,
  readWinchRunProperties,
  type CrowdLine,
  type DisplayLine,
  type Helipad,
  type WinchRun,
} from './schema/flying';
import { readLogEntryProperties, type LogEntry } from './schema/log-entry';
import { readRunwayProperties, type Runway } from './schema/runway';
import { readSpotProperties, type StandingSpot } from './schema/standing-spot';

/** A feature whose geometry is one that its kind may have. What its shape has none of is empty. */
export interface Given {
  readonly id: string;
  readonly properties: JsonObject;
  /** The point itself, or the first corner. */
  readonly position: Position;
  readonly line: readonly Position[];
  readonly rings: readonly (readonly Position[])[];
}

/** Where a reader says what is odd: a doubt is used all the same, what is set aside has no meaning. */
export interface Say {
  readonly doubt: (reason: string) => void;
  readonly aside: (reason: string) => void;
}

interface KindRow {
  /** One of them within a sentence; many of them over a list. */
  readonly word: string;
  readonly many: string;
  readonly shapes: readonly Shape[];
  /**
   * How many are read: many times what a survey of the largest airfield has. What is beyond stays in the file and is
   * said; without a bound a file could stop the page for minutes.
   */
  readonly most: number;
  /** The member of the contents that holds them. */
  readonly list: string;
  /** What a feature means, with the defaults filled in; null when it was set aside. No reader: it is kept and not read yet. */
  readonly read: ((given: Given, say: Say) => unknown) | null;
}

/**
 * The kinds of features, in the order in which the screen lists them. Everything that goes by kind follows from this
 * table: opening, contents, bounds, lists, words. What other rooms do with a kind (draw it, edit it) are tables with a
 * row for each of these, so that the compiler names what a new one lacks.
 */
export const kinds = {
  runway: {
    word: 'runway',
    many: 'Runways',
    shapes: ['LineString'],
    most: 100,
    list: 'runways',
    read: ({ id, line, properties }: Given, { doubt }: Say): Runway => {
      if (line.length > 2)
        doubt(
          `geometry.coordinates: a runway has two ends, got ${line.length} positions; the first and the last are used`,
        );
      const ends: Runway['line'] = [line[0] as Position, line[line.length - 1] as Position];
      return { id, line: ends, ...readRunwayProperties(properties, doubt) };
    },
  },
  'standing-spot': {
    word: 'standing spot',
    many: 'Standing spots',
    shapes: ['Point'],
    most: 500,
    list: 'spots',
    read: ({ id, position, properties }: Given, { doubt }: Say): StandingSpot => ({
      id,
      position,
      ...readSpotProperties(properties, doubt),
    }),
  },
  'taxi-route': {
    word: 'taxi route',
    many: 'Taxi routes',
    shapes: ['LineString'],
    most: 1_000,
    list: 'taxiRoutes',
    read: ({ id, line, properties }: Given, { doubt }: Say): TaxiRoute => ({
      id,
      line,
      ...readApronProperties(properties, doubt),
    }),
  },
  apron: {
    word: 'apron',
    many: 'Aprons',
    shapes: ['Polygon'],
    most: 1_000,
    list: 'aprons',
    read: ({ id, rings, properties }: Given, { doubt }: Say): Apron => ({
      id,
      rings,
      ...readApronProperties(properties, doubt),
    }),
  },
  'no-go': {
    word: 'no-go area',
    many: 'No-go areas',
    shapes: ['Polygon'],
    most: 1_000,
    list: 'noGoAreas',
    read: ({ id, rings, properties }: Given, { doubt }: Say): NoGoArea => ({
      id,
      rings,
      ...readNoGoProperties(properties, doubt),
    }),
  },
  obstacle: {
    word: 'obstacle',
    many: 'Obstacles',
    shapes: ['Polygon', 'LineString'],
    most: 20_000,
    list: 'obstacles',
    read: ({ id, rings, line, properties }: Given, { doubt }: Say): Obstacle => ({
      id,
      rings,
      line,
      ...readObstacleProperties(properties, doubt),
    }),
  },
  'flight-path': {
    word: 'flight path',
    many: 'Flight paths',
    shapes: ['LineString'],
    most: 2_000,
    list: 'flightPaths',
    read: ({ id, line, properties }: Given, { doubt, aside }: Say): FlightPath | null => {
      const value = { id, line, ...readFlightPathProperties(properties, line.length, doubt) };
      if (value.heights.length === line.length) return value;
      aside(`heights: expected ${line.length} heights, one per position, got ${value.heights.length}`);
      return null;
    },
  },
  'display-line': {
    word: 'display line',
    many: 'Display lines',
    shapes: ['LineString'],
    most: 20,
    list: 'displayLines',
    read: ({ id, line, properties }: Given, { doubt }: Say): DisplayLine => {
      if (line.length > 2)
        doubt(
          `geometry.coordinates: a display line is straight, got ${line.length} positions; the first and the last are used`,
        );
      return { id, line, ...readDisplayLineProperties(properties, doubt) };
    },
  },
  'crowd-line': {
    word: 'crowd line',
    many: 'Crowd lines',
    shapes: ['LineString'],
    most: 50,
    list: 'crowdLines',
    read: ({ id, line, properties }: Given, { doubt }: Say): CrowdLine => ({
      id,
      line,
      ...readCrowdLineProperties(properties, doubt),
    }),
  },
  helipad: {
    word: 'helipad',
    many: 'Helipads',
    shapes: ['Point'],
    most: 100,
    list: 'helipads',
    read: ({ id, position, properties }: Given, { doubt }: Say): Helipad => ({
      id,
      position,
      ...readHelipadProperties(properties, doubt),
    }),
  },
  'winch-run': {
    word: 'winch run',
    many: 'Winch runs',
    shapes: ['LineString'],
    most: 20,
    list: 'winchRuns',
    read: ({ id, line, properties }: Given, { doubt }: Say): WinchRun => ({
      id,
      line,
      ...readWinchRunProperties(properties, doubt),
    }),
  },
  /** Roads, paths, parking, greens, water ...: what people may stand on or not, drawn faintly. */
  'ground-use': {
    word: 'ground use',
    many: 'Roads, paths and greens',
    shapes: ['LineString', 'Polygon'],
    most: 5_000,
    list: 'groundUses',
    read: ({ id, rings, line, properties }: Given, { doubt }: Say): GroundUse => ({
      id,
      rings,
      line,
      ...readGroundUseProperties(properties, doubt),
    }),
  },
  /** A pass that was photographed, when and with what. */
  'log-entry': {
    word: 'log entry',
    many: 'Log',
    shapes: ['Point'],
    most: 20_000,
    list: 'logEntries',
    read: ({ id, position, properties }: Given, { doubt }: Say): LogEntry => ({
      id,
      position,
      ...readLogEntryProperties(properties, doubt),
    }),
  },
} as const satisfies Readonly<Record<string, KindRow>>;

export type Kind = keyof typeof kinds;

/** Kinds that have a reader. */
export type ReadableKind = {
  [K in Kind]: (typeof kinds)[K]['read'] extends null ? never : K;
}[Kind];

type Reader<K extends ReadableKind> = Extract<(typeof kinds)[K]['read'], (...args: never[]) => unknown>;
/** What a feature of a kind means. */
export type ValueOf<K extends ReadableKind> = NonNullable<ReturnType<Reader<K>>>;

/** The lists of the contents, one a kind that has a reader. */
export type KindLists = {
  readonly [K in ReadableKind as (typeof kinds)[K]['list']]: readonly ValueOf<K>[];
};

export const isKind = (kind: unknown): kind is Kind => typeof kind === 'string' && Object.hasOwn(kinds, kind);

const isReadable = (kind: Kind): kind is ReadableKind => kinds[kind].read !== null;

/** The kinds that have a reader, in the order of the screen. */
export const readableKinds: readonly ReadableKind[] = (Object.keys(kinds) as Kind[]).filter(isReadable);
