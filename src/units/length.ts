/** 1 ft is 0.3048 m exactly (international yard and pound agreement, 1959). */
export const metresPerFoot = 0.3048;
/** 1 NM is 1852 m exactly (First International Extraordinary Hydrographic Conference, 1929). */
export const metresPerNauticalMile = 1852;

export const feetToMetres = (ft: number): number => ft * metresPerFoot;
export const metresToFeet = (m: number): number => m / metresPerFoot;

export type LengthUnit = 'm' | 'ft';
