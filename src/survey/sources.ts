import type { Survey } from './document';
import { isObject, type Json, type JsonObject } from './json';

/** Whose data a part of the survey is. `mark`: the few words that a map with these data on it must show. */
export interface SourceCredit {
  readonly text: string;
  readonly mark?: string;
  readonly licence?: string;
  readonly licenceUrl?: string;
}

const listOf = (sunside: JsonObject): readonly Json[] => {
  const given = sunside['sources'];
  return Array.isArray(given) ? (given as readonly Json[]) : [];
};

/** The survey with the credits among its sources, each once: licences ask that they stay with the data. */
export function withSources(survey: Survey, credits: readonly SourceCredit[]): Survey {
  const there = listOf(survey.sunside);
  const texts = new Set(there.map((s) => (isObject(s) ? s['text'] : null)));
  const fresh = credits.filter(({ text }) => !texts.has(text)).map((credit): JsonObject => ({ ...credit }));
  if (fresh.length === 0) return survey;
  return { ...survey, sunside: { ...survey.sunside, sources: [...there, ...fresh] } };
}

/** The credits that a map of this survey must show. */
export function sourceMarks({ sunside }: Pick<Survey, 'sunside'>): readonly string[] {
  const marks = listOf(sunside).map((s) => (isObject(s) ? s['mark'] : null));
  return [...new Set(marks.filter((mark) => typeof mark === 'string'))];
}

/** All credits of a survey in full, each once; marks as well that no text contains. */
export function sourceTexts(survey: Pick<Survey, 'sunside'>): readonly string[] {
  const listed = listOf(survey.sunside).map((s) => (isObject(s) ? s['text'] : null));
  const texts = [...new Set(listed.filter((text) => typeof text === 'string'))];
  return [...texts, ...sourceMarks(survey).filter((mark) => !texts.some((text) => text.includes(mark)))];
}
