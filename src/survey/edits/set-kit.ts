import type { Survey } from '../document';
import { ownKit } from './kit-in-file';
import { patched } from './set-properties';

/** Sets the kit's name, or the share of the frame that a subject is to fill (0 to 1). */
export const setKit = (survey: Survey, patch: { name?: string | undefined; fill?: number }): Survey => ({
  ...survey,
  sunside: { ...survey.sunside, kit: patched(ownKit(survey), patch) },
});
