import { darkColour, lightColour, twilightColour } from '../../../styles/ramps';
import type { Sample } from '../../figures/types';

/** The data colour of the light on a sample: by light angle while the sun is up. */
export function swatch({ light, lightAngle }: Pick<Sample, 'light' | 'lightAngle'>): string {
  if (light === 'dark') return darkColour;
  return light === 'civil-twilight' ? twilightColour : lightColour(lightAngle);
}
