import { parseNumber } from './number';

/** Any angle in degrees brought into [0, 360). */
export const wrap360 = (degrees: number): number => ((degrees % 360) + 360) % 360;

/** Magnetic declination, degrees with east positive: "1.2° east", "0.4° west", "0.0°". */
export function formatDeclination(degrees: number): string {
  const size = Math.abs(degrees).toFixed(1);
  if (size === '0.0') return '0.0°';
  return `${size}° ${degrees > 0 ? 'east' : 'west'}`;
}

/** Degrees as typed, with or without the sign for them; null when it is no number. */
export function parseDegrees(text: string): number | null {
  return parseNumber(text.replace(/\s*([°º˚]|deg(rees?)?)\s*$/iu, ''));
}

/** Degrees, minutes and seconds of an angle without its sign; rounding never leaves 60 seconds behind. */
export function sexagesimal(
  degrees: number,
  secondDecimals: number,
): { readonly degrees: number; readonly minutes: number; readonly seconds: number } {
  const unit = 10 ** secondDecimals;
  const ticks = Math.round(Math.abs(degrees) * 3600 * unit);
  const perMinute = 60 * unit;
  const minutes = Math.floor(ticks / perMinute);
  return {
    degrees: Math.floor(minutes / 60),
    minutes: minutes % 60,
    seconds: (ticks % perMinute) / unit,
  };
}
