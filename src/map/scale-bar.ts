import { decimal, length as printed } from '../units/format';
import { metresPerFoot, type LengthUnit } from '../units/length';
import { metresPerPixel } from './screen';

/** Pixels that a scale bar takes at most. */
const longest = 130;

/** The longest bar of a round length that fits: 1, 2 or 5 times a power of ten, in m or ft. */
export function scaleBar(
  lat: number,
  zoom: number,
  unit: LengthUnit = 'm',
): { readonly label: string; readonly pixels: number } {
  const size = unit === 'ft' ? metresPerFoot : 1;
  const perPixel = metresPerPixel(lat, zoom) / size;
  const most = longest * perPixel;
  const power = 10 ** Math.floor(Math.log10(most));
  const length = ([5, 2, 1].find((n) => n * power <= most) ?? 1) * power;
  const label =
    unit === 'ft' || length < 1000 ? printed(length * size, unit) : `${decimal(length / 1000, 0)} km`;
  return { label, pixels: length / perPixel };
}
