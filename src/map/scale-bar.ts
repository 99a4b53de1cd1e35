import { metres, decimal } from '../units/format';
import { metresPerPixel } from './screen';

/** Pixels that a scale bar takes at most. */
const longest = 130;

/** The longest bar of a round length that fits: 1, 2 or 5 times a power of ten, in m. */
export function scaleBar(lat: number, zoom: number): { readonly label: string; readonly pixels: number } {
  const perPixel = metresPerPixel(lat, zoom);
  const most = longest * perPixel;
  const power = 10 ** Math.floor(Math.log10(most));
  const length = ([5, 2, 1].find((n) => n * power <= most) ?? 1) * power;
  const label = length < 1000 ? metres(length) : `${decimal(length / 1000, 0)} km`;
  return { label, pixels: length / perPixel };
}
