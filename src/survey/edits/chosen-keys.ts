import type { Survey } from '../document';
import { isObject, type Json, type JsonObject } from '../json';
import type { ListName } from '../kit-lists';
import { patched, type Patch } from './set-properties';

/**
 * What `current` chooses, after a key was changed (`to`) or has gone (`to` is undefined): a choice of nothing
 * would be a doubt at every opening.
 */
export function withKeyChanged(survey: Survey, list: ListName, from: string, to: string | undefined): Survey {
  const { current } = survey.sunside;
  if (!isObject(current)) return survey;
  const change = changes[list](current, from, to);
  return Object.keys(change).length === 0
    ? survey
    : { ...survey, sunside: { ...survey.sunside, current: patched(current, change) } };
}

type Change = (current: JsonObject, from: string, to: string | undefined) => Patch;

const one =
  (member: 'body' | 'subject'): Change =>
  (current, from, to) =>
    current[member] === from ? { [member]: to } : {};

const changes: Record<ListName, Change> = {
  bodies: one('body'),
  subjects: one('subject'),
  lenses: (current, from, to) => {
    const given = current['lenses'];
    const chosen: readonly Json[] = Array.isArray(given) ? (given as readonly Json[]) : [];
    if (!chosen.includes(from)) return {};
    const left = chosen.flatMap((key) => (key !== from ? [key] : to === undefined ? [] : [to]));
    return { lenses: left.length > 0 ? left : undefined };
  },
};
