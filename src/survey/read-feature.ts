import type { Position, SurveyFeature } from './document';
import { readShape } from './geometry';
import { isKind, kinds, type Given, type Kind, type ReadableKind, type Say, type ValueOf } from './kinds';
import type { Problem } from './problems';

/** What one feature means: a value of its kind, or null with the reason among the problems. */
export type FeatureReading =
  | {
      [K in ReadableKind]: {
        readonly kind: K;
        readonly value: ValueOf<K>;
        readonly problems: readonly Problem[];
      };
    }[ReadableKind]
  | { readonly kind: null; readonly problems: readonly Problem[] };

export function kindOf(feature: SurveyFeature): Kind | null {
  const kind = feature.properties?.['kind'];
  return isKind(kind) ? kind : null;
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
  const row = kinds[kind];
  const shape = readShape(feature.geometry, row.shapes);
  if (!shape.ok) return { kind: null, problems: [{ id, reason: shape.reason, used: false }] };
  if (row.read === null) return { kind: null, problems: [] };
  const problems: Problem[] = [];
  const say: Say = {
    doubt: (reason) => void problems.push({ id, reason, used: true }),
    aside: (reason) => void problems.push({ id, reason, used: false }),
  };
  const rings = shape.shape === 'Polygon' ? (shape.coordinates as Position[][]) : [];
  const line = shape.shape === 'LineString' ? (shape.coordinates as Position[]) : [];
  const position = line[0] ?? rings[0]?.[0] ?? (shape.coordinates as Position);
  const given: Given = { id, properties: feature.properties ?? {}, position, line, rings };
  const value = row.read(given, say);
  // The row's own reader has made the value.
  return value === null ? { kind: null, problems } : ({ kind, value, problems } as FeatureReading);
}
