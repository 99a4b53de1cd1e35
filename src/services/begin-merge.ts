import { groundLine } from '../figures/geometry/earth';
import { readSafely, readSurvey } from '../keeping/opening';
import { readContents } from '../survey/contents';
import type { Survey } from '../survey/document';
import { openSurvey } from '../survey/open';
import type { OtherSide } from './merging.svelte';
import { SurveyMerge, type MergeNeeds } from './survey-merge.svelte';

/** m between two surveys' references from which on they are of two fields: half the way to a near neighbour. CP. */
const oneField = 8_000;

/** A merge with the other side, or why there can be none, in a sentence. */
export async function beginMerge(side: OtherSide, needs: MergeNeeds): Promise<SurveyMerge | string> {
  const { document } = needs;
  const { from } = side;
  if (document.readOnly)
    return 'A newer version of Sunside wrote the open survey: nothing can be merged into it here.';
  const opened = await readSafely(readSurvey(side.source, () => undefined));
  if (!opened) return `${from} was not read.`;
  if (!opened.ok) return `${from} was not merged. ${opened.reason} The open survey stays as it is.`;
  if (opened.newer)
    return `A newer version of Sunside wrote ${from}: load the page anew, then merge it. The open survey stays as it is.`;
  const began = side.base === null ? null : openSurvey(side.base);
  const away = side.base === null ? apart(document.survey, opened.survey) : null;
  if (away !== null)
    return `${from} is of another field, ${Math.round(away / 1000)} km from this one: open it as a survey of its own.`;
  return new SurveyMerge({ ...side, theirs: opened.survey, base: began?.ok ? began.survey : null }, needs);
}

/** m between two surveys that are of different fields; null where they are of one, or may be. */
function apart(mine: Survey, theirs: Survey): number | null {
  const ids = new Set(mine.features.map(({ id }) => id));
  if (theirs.features.some(({ id }) => ids.has(id))) return null;
  // A survey with nothing drawn may be of any field.
  if (mine.features.length === 0 || theirs.features.length === 0) return null;
  const { distance } = groundLine(readContents(mine).site.reference, readContents(theirs).site.reference);
  return distance > oneField ? distance : null;
}
