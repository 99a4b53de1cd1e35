import type { Survey } from '../document';
import { standingBy } from './kit-in-file';
import { patched } from './set-properties';

/** Takes away a kit that stands by. The one in use cannot be taken away: choose another one first. */
export function deleteKit(survey: Survey, index: number): Survey {
  const kits = standingBy(survey);
  if (kits[index] === undefined) return survey;
  const left = kits.toSpliced(index, 1);
  return { ...survey, sunside: patched(survey.sunside, { kits: left.length > 0 ? left : undefined }) };
}
