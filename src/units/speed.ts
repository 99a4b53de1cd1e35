import { metresPerNauticalMile } from './length';

/** 1 kt is one nautical mile an hour: 1852/3600 m/s exactly. */
const metresPerSecondPerKnot = metresPerNauticalMile / 3600;

export const knotsToMetresPerSecond = (kt: number): number => kt * metresPerSecondPerKnot;
export const metresPerSecondToKnots = (ms: number): number => ms / metresPerSecondPerKnot;

export type SpeedUnit = 'kt' | 'm/s' | 'km/h';

export const metresPerSecondPer: Readonly<Record<SpeedUnit, number>> = {
  kt: metresPerSecondPerKnot,
  'm/s': 1,
  'km/h': 1 / 3.6,
};
