import type { Survey } from '../document';
import { ownKit, standingBy } from './kit-in-file';

/** A further kit, in use from now on: a copy of the one in use, which stands by. */
export function addKit(survey: Survey, name: string): Survey {
  const kit = ownKit(survey);
  return {
    ...survey,
    sunside: { ...survey.sunside, kit: { ...kit, name }, kits: [...standingBy(survey), kit] },
  };
}
