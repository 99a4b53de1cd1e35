import type { Survey } from '../document';
import { isObject } from '../json';
import { calmInFile, configurationsInFile, withFlow } from './flow-in-file';
import { patched, type Patch } from './set-properties';

/** Sets what a flow configuration says; a new name takes the choice for calm wind with it. */
export function changeConfiguration(survey: Survey, index: number, patch: Patch): Survey {
  const list = configurationsInFile(survey);
  const old = list[index];
  if (!isObject(old)) return survey;
  const changed = patched(old, patch);
  const calm = calmInFile(survey);
  const named = changed['name'];
  const renamed = calm !== null && calm === old['name'] && typeof named === 'string';
  return withFlow(survey, list.with(index, changed), renamed ? named : calm);
}
