import { darkColour, faded, flatColour, lightColour, twilightColour } from '../../../styles/ramps';
import type { ScoreWord } from '../../figures/score-words';
import type { Sample } from '../../figures/types';

/**
 * The data colour of the light on a sample, as the rings have it: by light angle while the sun is up, as lit as can be
 * where there is none, one for `flat` light, and as pale as the picture is poor.
 */
export function swatch(
  { light, lightAngle }: Pick<Sample, 'light' | 'lightAngle'>,
  flat: boolean,
  worth: ScoreWord,
): string {
  if (light === 'dark') return darkColour;
  if (light === 'civil-twilight') return twilightColour;
  return faded(flat ? flatColour : lightColour(lightAngle ?? 0), worth);
}
