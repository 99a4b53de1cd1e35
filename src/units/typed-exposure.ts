import { parseNumber } from './number';

export type ExposureReading =
  | { readonly ok: true; readonly ev100: number }
  | { readonly ok: true; readonly lux: number }
  | { readonly ok: false; readonly reason: string };

/** Exposure values that anybody photographs by, and lux likewise: starlight to snow in the sun. */
const evRange = [-6, 18] as const;
const luxRange = [0.05, 200_000] as const;

/** What lights the aircraft, as typed: "EV 3" or "3" (at ISO 100), "20 lux". */
export function parseExposure(text: string): ExposureReading {
  const [, before = '', digits = '', behind = ''] =
    /^(ev)?\s*([^a-z]*?)\s*(ev|lx|lux)?\.?$/iu.exec(text.trim()) ?? [];
  const number = parseNumber(digits);
  if (number === null || (before !== '' && behind !== ''))
    return {
      ok: false,
      reason: `"${text.trim()}" is no light. Type an exposure value, such as EV 3, or 20 lux.`,
    };
  const isLux = /^l/i.test(behind);
  const [least, most] = isLux ? luxRange : evRange;
  if (number < least || number > most)
    return { ok: false, reason: `Type ${isLux ? 'lux' : 'an exposure value'} from ${least} to ${most}.` };
  return isLux ? { ok: true, lux: number } : { ok: true, ev100: number };
}
