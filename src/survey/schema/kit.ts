import * as v from 'valibot';
import { boundedNumber, numberField, textField, type Read } from '../fields';

// Numbers that a camera could have: one that is merely above 0 would divide to infinity.
const focal = boundedNumber(1, 5000, 'mm');
/** In air no lens opens wider than f/0.5. */
const aperture = boundedNumber(0.5, 64, '(f-number)');
const whole = 'expected a whole number of pixels';
const pixels = v.pipe(v.number(whole), v.integer(whole), boundedNumber(1, 100_000, 'pixels'));
const factors = 'expected factors from 1 to 4';
const key = v.pipe(v.string('expected text'), v.nonEmpty('expected a key that is not empty'));

/** A camera body: sensor in mm and in pixels, landscape orientation. */
export const bodyFields = {
  key,
  name: textField(''),
  sensorWidth: boundedNumber(1, 200, 'mm'),
  sensorHeight: boundedNumber(1, 200, 'mm'),
  pixelsWide: pixels,
  pixelsHigh: pixels,
};
export type Body = Read<typeof bodyFields>;

/**
 * A lens: focal range in mm, widest aperture as f-number at the shortest focal length and, where it opens less there, at
 * the longest ("4.5-5.6"; absent: the same), factors of the extenders that go with it.
 */
export const lensFields = {
  key,
  name: textField(''),
  shortest: focal,
  longest: focal,
  widestAperture: aperture,
  widestApertureLong: v.nullish(aperture),
  extenders: v.nullish(
    v.array(
      v.pipe(v.number(factors), v.finite(factors), v.minValue(1, factors), v.maxValue(4, factors)),
      factors,
    ),
    [],
  ),
};
export interface Lens extends Omit<Read<typeof lensFields>, 'widestApertureLong'> {
  readonly widestApertureLong?: number | null;
}

/** What a lens is expected to be beyond its fields one by one; null when it is. */
export const lensRangeDoubt = ({ shortest, longest }: Pick<Lens, 'shortest' | 'longest'>): string | null =>
  shortest <= longest ? null : `expected no less than the shortest focal length, ${shortest} mm`;

export const kitFields = { fill: numberField(0.05, 1, 0.8) };

export interface Kit {
  /** Share of the frame that the subject is to fill, 0 to 1. */
  readonly fill: number;
  readonly bodies: readonly Body[];
  readonly lenses: readonly Lens[];
}
