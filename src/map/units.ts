import type { BearingStyle } from '../units/format';
import type { LengthUnit } from '../units/length';

/** How the labels on the map are printed. */
export interface MapUnits {
  readonly lengths: LengthUnit;
  readonly bearings: BearingStyle;
}

export const metric: MapUnits = { lengths: 'm', bearings: 'three-digits' };
