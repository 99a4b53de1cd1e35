import { atOnce } from '../at-once';
import {
  bySource,
  keptPrints,
  originMember,
  printOf,
  printsOf,
  standingOf,
  type Incoming,
} from '../brought-in';
import type { Survey, SurveyFeature } from '../document';
import { freshId } from '../ids';
import type { Json, JsonObject } from '../json';
import { withSources, type SourceCredit } from '../sources';
import { tidyShape } from './add-feature';
import { setSite } from './set-members';
import type { Patch } from './set-properties';

export interface BringIn {
  readonly features: readonly Incoming[];
  readonly credits: readonly SourceCredit[];
  /** What is said of the site where the survey says nothing yet. */
  readonly site?: Patch;
}

/**
 * Takes features over from another source. What is there already (by its source) is not doubled: members and geometry
 * that the user has left as they came follow the source, those that the user has changed stay.
 */
export const bringIn = (survey: Survey, what: BringIn): Survey => atOnce(bringingIn(survey, what));

/** The same feature by feature: a city has thousands of them. */
export function* bringingIn(survey: Survey, { features, credits, site }: BringIn): Generator<void, Survey> {
  const there = bySource(survey.features);
  const taken = new Set(survey.features.map(({ id }) => id));
  const changed = new Map<string, SurveyFeature>();
  const added: SurveyFeature[] = [];
  const seen = new Set<string>();
  for (const incoming of features) {
    if (seen.has(incoming.source)) continue;
    seen.add(incoming.source);
    const old = there.get(incoming.source);
    if (!old) {
      const id = freshId(taken);
      taken.add(id);
      added.push(fresh(incoming, id));
    } else if (standingOf(incoming, old) === 'changed') changed.set(old.id, followed(old, incoming));
    yield;
  }
  if (added.length === 0 && changed.size === 0) return survey;
  const merged: Survey = {
    ...survey,
    features: [...survey.features.map((f) => changed.get(f.id) ?? f), ...added],
  };
  return withSources(site ? setSite(merged, site) : merged, credits);
}

const originOf = (incoming: Incoming): JsonObject => ({ source: incoming.source, was: printsOf(incoming) });

const fresh = (incoming: Incoming, id: string): SurveyFeature => ({
  type: 'Feature',
  id,
  properties: { kind: incoming.kind, ...incoming.properties, [originMember]: originOf(incoming) },
  geometry: tidyShape(incoming.shape),
});

/** The feature as its source has it now, but for what the user has changed. */
function followed(old: SurveyFeature, incoming: Incoming): SurveyFeature {
  const was = keptPrints(old);
  const { properties } = old;
  const untouched = (key: string, value: Json | undefined) => printOf(value) === (was[key] ?? printOf(null));
  const merged: Record<string, Json> = { ...properties, [originMember]: originOf(incoming) };
  for (const [key, value] of Object.entries(incoming.properties))
    if (untouched(key, properties?.[key])) merged[key] = value;
  // What the source says no longer goes, where the user has left it alone.
  for (const key of Object.keys(was))
    if (key !== 'geometry' && !Object.hasOwn(incoming.properties, key) && untouched(key, properties?.[key]))
      delete merged[key];
  if (!untouched('geometry', old.geometry ?? null)) return { ...old, properties: merged };
  const { bbox: _stale, ...rest } = old;
  return { ...rest, type: 'Feature', id: old.id, properties: merged, geometry: tidyShape(incoming.shape) };
}
