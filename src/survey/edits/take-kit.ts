import type { Survey } from '../document';
import type { JsonObject } from '../json';
import { chooseKit } from './choose-kit';
import { standingBy } from './kit-in-file';

/**
 * Takes a kit from elsewhere into use. What the survey brought stands by, so that nothing is lost; the starter kit, which
 * no survey has to bring, does not.
 */
export function takeKit(survey: Survey, kit: JsonObject): Survey {
  const kits = standingBy(survey);
  const among = kits.findIndex((other) => JSON.stringify(other) === JSON.stringify(kit));
  const at = among === -1 ? kits.length : among;
  const standing = among === -1 ? [...kits, kit] : kits;
  const brought = survey.sunside['kit'] !== undefined;
  const swapped = chooseKit({ ...survey, sunside: { ...survey.sunside, kits: standing } }, at);
  if (brought) return swapped;
  const { kits: after, ...sunside } = swapped.sunside;
  const left = (Array.isArray(after) ? after : []).filter((_, i) => i !== at);
  return { ...swapped, sunside: left.length > 0 ? { ...sunside, kits: left } : sunside };
}
