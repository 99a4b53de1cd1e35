import { surveyVersion } from './document';
import type { JsonObject } from './json';

/** `from` is the version that the migration reads; it returns the document of version `from + 1`. */
export interface Migration {
  readonly from: number;
  readonly migrate: (document: JsonObject) => JsonObject;
}

/** Numbered 1, 2, 3 without gaps: the n-th entry turns version n into version n + 1. Version 1 is the first. */
export const migrations: readonly Migration[] = [];

/** Brings a document of an older version up to `to`, one step after the other. */
export function migrated(
  document: JsonObject,
  version: number,
  steps: readonly Migration[] = migrations,
  to: number = surveyVersion,
): JsonObject {
  let current = document;
  for (let v = version; v < to; v++) {
    const step = steps[v - 1];
    if (step?.from !== v)
      throw new Error(`expected a migration from version ${v}, got ${step?.from ?? 'none'}`);
    current = step.migrate(current);
  }
  return current;
}
