import type { Position, Survey, SurveyFeature } from '../document';
import { freshId } from '../ids';
import { isObject, type Json, type JsonObject } from '../json';
import { tidyShape } from './add-feature';

/** A pass as it is to be kept: what `LogEntry` says, without members that nobody knows. */
export interface NewLogEntry {
  readonly position: Position;
  readonly properties: JsonObject;
}

const keyOf = (p: Readonly<Record<string, Json | undefined>>): string =>
  JSON.stringify([p['time'] ?? null, p['spot'] ?? null, p['camera'] ?? null]);

/** Keeps passes in the survey's log. What is there already (time, spot and camera) is not doubled, but takes what was measured since. */
export function addLogEntries(survey: Survey, entries: readonly NewLogEntry[]): Survey {
  const taken = new Set(survey.features.map(({ id }) => id));
  const measured = new Map(
    entries.flatMap(({ properties }) =>
      isObject(properties['measured']) ? [[keyOf(properties), properties['measured']] as const] : [],
    ),
  );
  const there = new Set<string>();
  let mended = false;
  const features = survey.features.map((feature) => {
    const { properties } = feature;
    if (!isObject(properties) || properties['kind'] !== 'log-entry') return feature;
    const key = keyOf(properties);
    there.add(key);
    const fresh = measured.get(key);
    if (!fresh || JSON.stringify(fresh) === JSON.stringify(properties['measured'])) return feature;
    mended = true;
    return { ...feature, properties: { ...properties, measured: fresh } };
  });
  const added: SurveyFeature[] = [];
  for (const { position, properties } of entries) {
    const key = keyOf(properties);
    if (there.has(key)) continue;
    there.add(key);
    const id = freshId(taken);
    taken.add(id);
    added.push({
      type: 'Feature',
      id,
      properties: { kind: 'log-entry', ...properties },
      geometry: tidyShape({ type: 'Point', coordinates: position }),
    });
  }
  return added.length === 0 && !mended ? survey : { ...survey, features: [...features, ...added] };
}
