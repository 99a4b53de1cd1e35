import type { Survey } from '../document';
import { isObject } from '../json';
import { patched, type Patch } from './set-properties';

/** Sets what the field allows, whom to ask and when that was checked; undefined takes a member away. */
export function setRules(survey: Survey, patch: Patch): Survey {
  const old = survey.sunside['rules'];
  const rules = patched(isObject(old) ? old : {}, patch);
  const stated = Object.keys(rules).length > 0 ? rules : undefined;
  return { ...survey, sunside: patched(survey.sunside, { rules: stated }) };
}
