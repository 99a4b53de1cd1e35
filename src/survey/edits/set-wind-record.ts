import type { Survey } from '../document';
import type { Json } from '../json';
import type { WindRecord } from '../schema/wind-record';
import { patched } from './set-properties';

/** Keeps a record of past winds, or forgets it. */
export const setWindRecord = (survey: Survey, record: WindRecord | null): Survey => ({
  ...survey,
  sunside: patched(survey.sunside, { windRecord: record === null ? undefined : (record as unknown as Json) }),
});
