import type { Survey } from '../document';
import { isObject } from '../json';
import { calmInFile, configurationsInFile, withFlow } from './flow-in-file';

/** Takes a flow configuration out; the choice for calm wind goes with it. */
export function deleteConfiguration(survey: Survey, index: number): Survey {
  const list = configurationsInFile(survey);
  if (list[index] === undefined) return survey;
  const calm = calmInFile(survey);
  const rest = list.toSpliced(index, 1);
  const stays = rest.some((c) => isObject(c) && c['name'] === calm);
  return withFlow(survey, rest, stays ? calm : null);
}
