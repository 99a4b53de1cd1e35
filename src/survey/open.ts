import type { Survey, SurveyFeature } from './document';
import { surveyVersion } from './document';
import { freshId } from './ids';
import { extentOf, isObject, shown, type Json, type JsonObject } from './json';
import { whereJsonBreaks } from './json-place';
import { migrated } from './migrations';
import { normalGeometry } from './normal-geometry';
import type { Problem } from './problems';
import { kindOf } from './read-feature';

export type Opened =
  | {
      readonly ok: true;
      readonly survey: Survey;
      readonly problems: readonly Problem[];
      readonly newer: boolean;
    }
  | { readonly ok: false; readonly reason: string };

/**
 * Where a file stops being a survey and begins to be a test of patience. A survey nests 8 deep; saving runs out of
 * stack at some thousands. A track of a whole day, recorded once a second, has 86,400 positions.
 */
const mostDeep = 1000;
const mostFeatures = 500_000;
const mostPositions = 200_000;

/** Problems that are listed one by one. */
const mostProblems = 1000;

const refused = (reason: string): Opened => ({ ok: false, reason });

/**
 * Text of a file -> survey and what is odd about it. Opens what can be opened: a feature that has no meaning
 * stays in the document and is listed, never dropped. `newer`: written by a later program, to be shown read-only.
 */
export function openSurvey(text: string): Opened {
  if (text.trim() === '') return refused('The file is empty.');
  // A byte order mark at the start is common in exported files and no JSON.
  const json = text.replace(/^\uFEFF/, '');
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch {
    return refused(`The file is not JSON: ${placeOfError(json)}`);
  }
  if (!isObject(value)) return refused(`The file holds ${shown(value)}, not a GeoJSON FeatureCollection.`);
  if (value['type'] !== 'FeatureCollection')
    return refused(
      `At type: expected "FeatureCollection", got ${shown(value['type'])}. A survey is a GeoJSON FeatureCollection.`,
    );
  if (!Array.isArray(value['features']))
    return refused(`At features: expected a list of features, got ${shown(value['features'])}.`);
  const { depth, infinite } = extentOf(value, mostDeep);
  if (depth > mostDeep)
    return refused(`Lists and objects lie within one another more than ${mostDeep} deep: no survey does.`);
  const features = value['features'] as readonly Json[];
  if (features.length > mostFeatures)
    return refused(`It holds ${features.length} features; up to ${mostFeatures} can be shown.`);
  const long = features.findIndex((feature) => positionsIn(feature) > mostPositions);
  if (long >= 0)
    return refused(
      `At features.${long}: ${positionsIn(features[long])} positions in one feature; up to ${mostPositions} can be shown.`,
    );
  const opened = openCollection(value);
  const problems = [...opened.problems];
  if (infinite > 0)
    problems.unshift({
      id: null,
      reason: `${infinite === 1 ? 'A number is' : `${infinite} numbers are`} larger than any program can hold; saved as null.`,
      used: false,
    });
  return { ...opened, problems: listed(problems) };
}

function positionsIn(feature: Json | undefined): number {
  const geometry = isObject(feature) ? feature['geometry'] : null;
  const coordinates = isObject(geometry) ? geometry['coordinates'] : null;
  if (!Array.isArray(coordinates)) return 0;
  const lists = coordinates as readonly Json[];
  const inRings = lists.map((ring) => (Array.isArray(ring) ? ring.length : 0));
  return Math.max(lists.length, ...(lists.length < 1000 ? [inRings.reduce((a, b) => a + b, 0)] : []));
}

/** The first of them, and how many more there are of each sort. */
function listed(problems: readonly Problem[]): readonly Problem[] {
  if (problems.length <= mostProblems) return problems;
  const rest = problems.slice(mostProblems);
  const more = [true, false].flatMap((used): Problem[] => {
    const count = rest.filter((problem) => problem.used === used).length;
    return count === 0
      ? []
      : [{ id: null, reason: `${count} more problems of this file are not listed.`, used }];
  });
  return [...problems.slice(0, mostProblems), ...more];
}

function openCollection(value: JsonObject): Extract<Opened, { ok: true }> {
  const problems: Problem[] = [];
  const doubt = (reason: string) => void problems.push({ id: null, reason, used: true });
  const member = value['sunside'];
  if (member !== undefined && !isObject(member))
    doubt(`sunside: expected an object, got ${shown(member)}; defaults are used`);
  const sunside: JsonObject = isObject(member) ? member : {};
  const stated = sunside['version'];
  const version = typeof stated === 'number' && Number.isInteger(stated) && stated >= 1 ? stated : 1;
  if (stated !== undefined && stated !== version)
    doubt(
      `sunside.version: expected a whole number from 1, got ${shown(stated)}; the file is read as version 1`,
    );
  const newer = version > surveyVersion;
  const document = newer ? value : migrated(value, version);
  const { bbox: _stale, sunside: _member, features, ...rest } = document;
  const marked = isObject(document['sunside']) ? document['sunside'] : {};
  const list = features as readonly Json[];
  const strays = list.filter((entry) => !isObject(entry));
  if (member !== undefined && !isObject(member)) strays.push(member);
  const kept = Array.isArray(marked['strays']) ? (marked['strays'] as readonly Json[]) : [];
  const survey: Survey = {
    ...rest,
    type: 'FeatureCollection',
    sunside: {
      ...marked,
      ...(newer ? {} : { version: surveyVersion }),
      // What stands among the features and is none would make the saved file invalid; it is kept beside them.
      ...(strays.length > 0 ? { strays: [...kept, ...strays] } : {}),
    },
    features: withIds(list, problems),
  };
  return { ok: true, survey, problems, newer };
}

/** Every feature an object with a string id of its own; anything else in the list is reported. */
function withIds(list: readonly Json[], problems: Problem[]): SurveyFeature[] {
  const taken = new Set(
    list.map((f) => (isObject(f) ? stringId(f['id']) : null)).filter((id) => id !== null),
  );
  const seen = new Set<string>();
  const out: SurveyFeature[] = [];
  list.forEach((entry, i) => {
    if (!isObject(entry)) {
      problems.push({
        id: null,
        reason: `features.${i}: expected a feature, got ${shown(entry)}`,
        used: false,
      });
      return;
    }
    const own = stringId(entry['id']);
    const id = own !== null && !seen.has(own) ? own : freshId(taken);
    seen.add(id);
    taken.add(id);
    if (own === null)
      problems.push({
        id,
        reason: `features.${i}.id: ${entry['id'] === undefined ? 'missing' : `not usable (${shown(entry['id'])})`}; it is "${id}" now`,
        used: true,
      });
    else if (own === id && typeof entry['id'] === 'number')
      problems.push({
        id,
        reason: `features.${i}.id: expected text, got the number ${shown(entry['id'])}; it is "${id}" now`,
        used: true,
      });
    else if (own !== id)
      problems.push({
        id,
        reason: `features.${i}.id: ${shown(own)} is there already; this one is "${id}" now`,
        used: true,
      });
    out.push(normalFeature(entry, id, problems));
  });
  return out;
}

/** GeoJSON allows numbers as ids; ours are strings, and a number keeps its digits. */
function stringId(id: Json | undefined): string | null {
  if (typeof id === 'number') return String(id);
  return typeof id === 'string' && id !== '' ? id : null;
}

function normalFeature(entry: JsonObject, id: string, problems: Problem[]): SurveyFeature {
  const objectIn = (member: 'properties' | 'geometry'): JsonObject | null => {
    const value = entry[member] ?? null;
    if (value === null || isObject(value)) return value;
    problems.push({
      id,
      reason: `${member}: expected an object, got ${shown(value)}; left out`,
      used: false,
    });
    return null;
  };
  const [properties, geometry] = [objectIn('properties'), objectIn('geometry')];
  const feature: SurveyFeature = { ...entry, type: 'Feature', id, properties, geometry };
  if (kindOf(feature) === null || geometry === null) return feature;
  const normal = normalGeometry(geometry);
  for (const reason of normal.changes) problems.push({ id, reason, used: true });
  if (normal.geometry === geometry && feature['bbox'] === undefined) return feature;
  const { bbox: _stale, ...ours } = feature;
  return { ...ours, type: 'Feature', id, properties, geometry: normal.geometry };
}

/** Where JSON broke, by line and column. */
function placeOfError(text: string): string {
  const offset = whereJsonBreaks(text) ?? text.length;
  let line = 1;
  let begin = 0;
  for (let end = text.indexOf('\n'); end >= 0 && end < offset; end = text.indexOf('\n', begin)) {
    line++;
    begin = end + 1;
  }
  const place = `line ${line}, column ${offset - begin + 1}`;
  return offset < text.length ? `it breaks at ${place}.` : `it breaks off at ${place}, before its end.`;
}
