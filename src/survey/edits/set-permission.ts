import type { Survey } from '../document';
import { isObject } from '../json';
import { changeFeature } from './change-feature';
import { patched, type Patch } from './set-properties';

/** Sets what was asked and answered for a standing spot, or forgets it; what else its access record says stays. */
export function setPermission(survey: Survey, id: string, patch: Patch | null): Survey {
  return changeFeature(survey, id, (feature) => {
    const given = feature.properties?.['access'];
    const access = isObject(given) ? given : {};
    const old = access['permission'];
    const permission = patch === null ? undefined : patched(isObject(old) ? old : {}, patch);
    return { ...feature, properties: { ...feature.properties, access: patched(access, { permission }) } };
  });
}
