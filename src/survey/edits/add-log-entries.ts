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

/** Keeps passes in the survey's log. What is there already (time, spot and camera) is not doubled. */
export function addLogEntries(survey: Survey, entries: readonly NewLogEntry[]): Survey {
  const taken = new Set(survey.features.map(({ id }) => id));
  const there = new Set(
    survey.features.flatMap(({ properties }) =>
      isObject(properties) && properties['kind'] === 'log-entry' ? [keyOf(properties)] : [],
    ),
  );
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
  return added.length === 0 ? survey : { ...survey, features: [...survey.features, ...added] };
}
