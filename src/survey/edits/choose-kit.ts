import type { Survey } from '../document';
import { isObject } from '../json';
import { kitInUse } from '../read-kit';
import { withKeyChanged } from './chosen-keys';
import { ownKit, standingBy } from './kit-in-file';

/** Takes a kit that stood by into use; the one that was in use stands by in its place. */
export function chooseKit(survey: Survey, index: number): Survey {
  const kits = standingBy(survey);
  const kit = kits[index];
  if (!isObject(kit)) return survey;
  const before = kitInUse(survey.sunside).kit;
  const swapped = {
    ...survey,
    sunside: { ...survey.sunside, kit, kits: kits.with(index, ownKit(survey)) },
  };
  const after = kitInUse(swapped.sunside).kit;
  // A choice of a body or lens that the other kit does not have would be a choice of nothing.
  return (['bodies', 'lenses'] as const).reduce<Survey>((changed, list) => {
    const gone = before[list].filter(({ key }) => !after[list].some((entry) => entry.key === key));
    return gone.reduce((s, { key }) => withKeyChanged(s, list, key, undefined), changed);
  }, swapped);
}
