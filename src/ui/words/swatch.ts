import { darkColour, lightColour, twilightColour } from '../../../styles/ramps';
import type { Sample } from '../../figures/types';

/** The data colour of the light on a sample: by light angle while the sun is up, as lit as can be where there is none. */
export function swatch({ light, lightAngle }: Pick<Sample, 'light' | 'lightAngle'>): string {
  if (light === 'dark') return darkColour;
  return light === 'civil-twilight' ? twilightColour : lightColour(lightAngle ?? 0);
}
