import type { Survey } from '../survey/document';
import { openSurvey } from '../survey/open';
import type { Problem } from '../survey/problems';
import type { Read } from './arguments';
import { bytesOf, longestSurvey } from './file-bytes';

/** The survey in a file or a pipe, with the doubts about it; or why there is none, in one line that names the file. */
export function surveyIn(
  file: string,
): Read<{ readonly survey: Survey; readonly problems: readonly Problem[] }> {
  const bytes = bytesOf(file, longestSurvey);
  if (!bytes.ok) return bytes;
  const opened = openSurvey(bytes.value.toString('utf8'));
  if (!opened.ok) return { ok: false, reason: `${file}: ${opened.reason}` };
  if (opened.newer)
    return {
      ok: false,
      reason: `${file}: the survey was written by a newer version of Sunside; update to read it`,
    };
  return { ok: true, value: opened };
}
