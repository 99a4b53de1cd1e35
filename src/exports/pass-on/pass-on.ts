import type { Survey, SurveyFeature } from '../../survey/document';
import { isObject, type Json } from '../../survey/json';
import { kindOf } from '../../survey/read-feature';
import { knownOfFeature, knownOfSurvey, type Known } from './known-members';
import { partOf, type Part } from './parts';

/** One thing that is private unless it is ticked. */
export interface PrivateThing {
  readonly part: Part;
  /** Id of the feature that has it; null for the survey itself. */
  readonly id: string | null;
  /** Name of the member, "" for the whole feature. */
  readonly member: string;
}

export interface PassedOn {
  readonly survey: Survey;
  /** Everything private that the survey holds, whether it goes along or not. */
  readonly found: readonly PrivateThing[];
}

/**
 * The survey as it leaves this device (design, part two, section 13): without what is private or unknown, but for the
 * parts that were ticked. Credits always stay. `found` is what a person reads before it leaves.
 */
export function passOn(survey: Survey, ticked: ReadonlySet<Part>): PassedOn {
  const found: PrivateThing[] = [];
  const keeps = (part: Part, id: string | null, member: string) => {
    found.push({ part, id, member });
    return ticked.has(part);
  };
  const members = (value: Json, known: Known, path: readonly string[], id: string | null): Json => {
    if (known === true) return value;
    if (Array.isArray(value))
      return (value as readonly Json[]).map((entry) => members(entry, known, path, id));
    if (!isObject(value)) return value;
    const kept = Object.entries(value).flatMap(([key, member]): [string, Json][] => {
      const below = [...path, key];
      const knownMember = Object.hasOwn(known, key) ? known[key] : undefined;
      const part = knownMember === undefined ? 'unknown' : partOf(below);
      if (part !== null && isEmpty(member)) return [];
      if (part !== null && !keeps(part, id, key)) return [];
      return [[key, knownMember === undefined ? member : members(member, knownMember, below, id)]];
    });
    return Object.fromEntries(kept);
  };
  const features = survey.features.flatMap((feature): readonly SurveyFeature[] => {
    const kind = kindOf(feature);
    const whole = kind === null ? 'unknown' : kind === 'log-entry' ? 'log' : null;
    if (whole !== null) return keeps(whole, feature.id, '') ? [feature] : [];
    return [members(feature, knownOfFeature(kind), [], feature.id) as SurveyFeature];
  });
  const rest = Object.entries(survey).flatMap(([key, member]): [string, Json][] => {
    if (key === 'type') return [[key, member]];
    if (key === 'features') return [[key, features]];
    if (key === 'sunside') return [[key, members(member, knownOfSurvey, ['sunside'], null)]];
    return keeps('unknown', null, key) ? [[key, member]] : [];
  });
  return { survey: Object.fromEntries(rest) as Survey, found };
}

const isEmpty = (value: Json): boolean =>
  value === null ||
  value === '' ||
  (Array.isArray(value) && value.length === 0) ||
  (isObject(value) && Object.values(value).every(isEmpty));
