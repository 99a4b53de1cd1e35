import type { Survey, SurveyFeature } from '../survey/document';
import { isObject, type JsonObject } from '../survey/json';
import { followReferences } from './follow-references';
import { mergeMembers, mergeValues, type Ask, type Three } from './merge-values';
import type { Decide, Question } from './questions';
import { sameThings, turnedRunways, type SameThing } from './same-things';

export interface Merged {
  /** With my value wherever a question is open. */
  readonly survey: Survey;
  /** What both changed differently and `decide` left open. */
  readonly open: readonly Question[];
  /** All that was asked, answered or not. */
  readonly asked: readonly Question[];
  /** Ids of features that only they had, and of those whose deletion was followed. */
  readonly added: readonly string[];
  readonly deleted: readonly string[];
  /** Things of theirs that were known to be mine without sharing an id. */
  readonly same: readonly SameThing[];
  /** Theirs with my ids for what both have, as it was merged. */
  readonly theirs: Survey;
}

export interface MergeOptions {
  /** What both surveys began as, where it is known. */
  readonly base?: Survey | null;
  /** Answers questions; without it all stay open. */
  readonly decide?: Decide;
  /** Things (my id) of which theirs stays beside mine instead, and the id that theirs gets. */
  readonly beside?: ReadonlyMap<string, string>;
}

/**
 * Two states of one airfield's survey made one, by id and member (design, part two, section 13): a change on one side
 * wins, on both it is a question; nothing goes that is not among the answers. Pure: neither survey is changed.
 */
export function merge(
  mine: Survey,
  theirs: Survey,
  { base = null, decide, beside = new Map() }: MergeOptions = {},
): Merged {
  const same = sameThings(mine, theirs, base);
  const other = putBeside(followReferences(theirs, [...same, ...turnedRunways(mine, theirs)]), beside);
  const began =
    base && withoutAll(putBeside(followReferences(base, turnedRunways(mine, base)), beside), beside);
  const asked: Question[] = [];
  const open: Question[] = [];
  const askAbout =
    (id: string | null): Ask =>
    (about) => {
      const question = { id, ...about };
      asked.push(question);
      const take = decide?.(question) ?? null;
      if (take === null) open.push(question);
      // An open question shows mine; where mine is gone it shows theirs, so that nothing is lost meanwhile.
      return take ?? (about.mine === undefined ? 'theirs' : 'mine');
    };
  const members = mergeMembers(asMembers(began), mine, other, '', askAbout(null), ['features', 'type']);
  const features = mergeFeatures(mine, other, began, (id) => askAbout(id));
  const before = new Set(mine.features.map(({ id }) => id));
  const after = new Set(features.map(({ id }) => id));
  const survey: Survey = {
    ...mine,
    ...members,
    type: 'FeatureCollection',
    sunside: members['sunside'] as JsonObject,
    features,
  };
  return {
    survey: inMyOrder(survey, mine),
    open,
    asked,
    added: features.filter(({ id }) => !before.has(id)).map(({ id }) => id),
    deleted: mine.features.filter(({ id }) => !after.has(id)).map(({ id }) => id),
    same,
    theirs: other,
  };
}

/** Those things under ids of their own, and all that refers to them. */
const putBeside = (survey: Survey, beside: ReadonlyMap<string, string>): Survey =>
  followReferences(
    survey,
    [...beside].map(([mine, fresh]) => ({ theirs: mine, mine: fresh, reversed: false })),
  );

/** What stays beside mine did not begin as the same thing: else mine would be gone by their leave. */
function withoutAll(base: Survey, beside: ReadonlyMap<string, string>): Survey {
  if (beside.size === 0) return base;
  const fresh = new Set(beside.values());
  return { ...base, features: base.features.filter(({ id }) => !fresh.has(id)) };
}

const asMembers = (survey: Survey | null): JsonObject | undefined => survey ?? undefined;

function mergeFeatures(
  mine: Survey,
  theirs: Survey,
  base: Survey | null,
  askAbout: (id: string) => Ask,
): readonly SurveyFeature[] {
  const byId = (survey: Survey | null) => new Map((survey?.features ?? []).map((f) => [f.id, f]));
  const [b, m, t] = [byId(base), byId(mine), byId(theirs)];
  const ids = new Set([...m.keys(), ...t.keys()]);
  return [...ids].flatMap((id): readonly SurveyFeature[] => {
    const three: Three = { base: b.get(id), mine: m.get(id), theirs: t.get(id) };
    const merged = mergeValues(three, '', askAbout(id));
    // What is merged of features is one: `type`, `id` and the rest are members like any other.
    return isObject(merged) ? [merged as SurveyFeature] : [];
  });
}

/** Members of the file where mine stood, so that a merge that changed nothing is the same bytes. */
function inMyOrder(survey: Survey, mine: Survey): Survey {
  const keys = new Set([...Object.keys(mine), ...Object.keys(survey)]);
  const entries = [...keys].filter((key) => Object.hasOwn(survey, key)).map((key) => [key, survey[key]]);
  return Object.fromEntries(entries) as Survey;
}
