import { parseNumber } from './number';
import { metresPerSecondPer, type SpeedUnit } from './speed';

export type SpeedReading =
  { readonly ok: true; readonly metresPerSecond: number } | { readonly ok: false; readonly reason: string };

const spelled: readonly (readonly [RegExp, SpeedUnit])[] = [
  [/^(kts?|kn|knots?)$/i, 'kt'],
  [/^(m\/s|mps|m s-1)$/i, 'm/s'],
  [/^(km\/h|kmh|kph)$/i, 'km/h'],
];

/** The unit of speed that is meant, null for any other word. */
export const speedUnitOf = (text: string): SpeedUnit | null =>
  spelled.find(([pattern]) => pattern.test(text.trim()))?.[1] ?? null;

/** A speed as typed, in `bare` where no unit stands behind the number. */
export function parseSpeed(text: string, bare: SpeedUnit): SpeedReading {
  const [, digits = '', unit = ''] = /^([^a-z]*)(.*)$/is.exec(text.trim()) ?? [];
  const number = parseNumber(digits);
  const meant = unit === '' ? bare : speedUnitOf(unit);
  if (number === null || meant === null)
    return {
      ok: false,
      reason: `"${text.trim()}" is no speed. Type a number in ${bare}, or with its unit, such as 140 kt, 72 m/s or 260 km/h.`,
    };
  return { ok: true, metresPerSecond: number * metresPerSecondPer[meant] };
}
