import type { Kind, Position, SurveyFeature } from './document';
import { readShape, type Shape } from './geometry';
import type { JsonObject } from './json';
import type { Problem } from './problems';
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
import { readRunwayProperties, type Runway } from './schema/runway';
import { readSpotProperties, type StandingSpot } from './schema/standing-spot';

interface Values {
  runway: Runway;
  'standing-spot': StandingSpot;
  obstacle: Obstacle;
  'no-go': NoGoArea;
  apron: Apron;
  'taxi-route': TaxiRoute;
  'flight-path': FlightPath;
  'ground-use': GroundUse;
}
export type ReadableKind = keyof Values;

/** What one feature means: a value of its kind, or null with the reason among the problems. */
export type FeatureReading =
  | {
      [K in ReadableKind]: {
        readonly kind: K;
        readonly value: Values[K];
        readonly problems: readonly Problem[];
      };
    }[ReadableKind]
  | { readonly kind: null; readonly problems: readonly Problem[] };

const shapesOfKind: { readonly [K in Kind]: readonly Shape[] } = {
  runway: ['LineString'],
  'standing-spot': ['Point'],
  obstacle: ['Polygon', 'LineString'],
  'no-go': ['Polygon'],
  apron: ['Polygon'],
  'taxi-route': ['LineString'],
  'flight-path': ['LineString'],
  'ground-use': ['LineString', 'Polygon'],
  'log-entry': ['Point'],
};

export function kindOf(feature: SurveyFeature): Kind | null {
  const kind = feature.properties?.['kind'];
  return typeof kind === 'string' && Object.hasOwn(shapesOfKind, kind) ? (kind as Kind) : null;
}

const readings = new WeakMap<SurveyFeature, FeatureReading>();

/** Reads a feature once: surveys share what an edit left alone, so the next survey finds the reading here. */
export function readFeature(feature: SurveyFeature): FeatureReading {
  const seen = readings.get(feature);
  if (seen) return seen;
  const reading = read(feature);
  readings.set(feature, reading);
  return reading;
}

function read(feature: SurveyFeature): FeatureReading {
  const { id } = feature;
  const kind = kindOf(feature);
  // Other people's kinds are kept as they are and mean nothing here.
  if (kind === null) return { kind: null, problems: [] };
  const shape = readShape(feature.geometry, shapesOfKind[kind]);
  if (!shape.ok) return { kind: null, problems: [{ id, reason: shape.reason, used: false }] };
  const problems: Problem[] = [];
  const doubt = (reason: string) => void problems.push({ id, reason, used: true });
  const properties: JsonObject = feature.properties ?? {};
  const rings = shape.shape === 'Polygon' ? (shape.coordinates as Position[][]) : [];
  const line = shape.shape === 'LineString' ? (shape.coordinates as Position[]) : [];
  switch (kind) {
    case 'runway': {
      if (line.length > 2)
        doubt(
          `geometry.coordinates: a runway has two ends, got ${line.length} positions; the first and the last are used`,
        );
      const ends: Runway['line'] = [line[0] as Position, line[line.length - 1] as Position];
      return { kind, value: { id, line: ends, ...readRunwayProperties(properties, doubt) }, problems };
    }
    case 'standing-spot':
      return {
        kind,
        value: { id, position: shape.coordinates as Position, ...readSpotProperties(properties, doubt) },
        problems,
      };
    case 'obstacle':
      return { kind, value: { id, rings, line, ...readObstacleProperties(properties, doubt) }, problems };
    case 'no-go':
      return { kind, value: { id, rings, ...readNoGoProperties(properties, doubt) }, problems };
    case 'apron':
      return { kind, value: { id, rings, ...readApronProperties(properties, doubt) }, problems };
    case 'taxi-route':
      return { kind, value: { id, line, ...readApronProperties(properties, doubt) }, problems };
    case 'flight-path': {
      const value: FlightPath = { id, line, ...readFlightPathProperties(properties, line.length, doubt) };
      if (value.heights.length === line.length) return { kind, value, problems };
      const reason = `heights: expected ${line.length} heights, one per position, got ${value.heights.length}`;
      return { kind: null, problems: [...problems, { id, reason, used: false }] };
    }
    case 'ground-use':
      return { kind, value: { id, rings, line, ...readGroundUseProperties(properties, doubt) }, problems };
    case 'log-entry':
      return { kind: null, problems };
  }
}
