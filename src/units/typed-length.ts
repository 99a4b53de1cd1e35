import { feetToMetres } from './length';
import { parseNumber } from './number';

export type LengthReading =
  { readonly ok: true; readonly metres: number } | { readonly ok: false; readonly reason: string };

/** A length or height as typed: metres, or feet with "ft" behind the number. */
export function parseLength(text: string): LengthReading {
  const [, digits = '', unit = ''] =
    /^(.*?)\s*(m|metres?|meters?|ft|feet|foot|['\u2032])?\.?$/iu.exec(text.trim()) ?? [];
  const number = parseNumber(digits);
  if (number === null)
    return {
      ok: false,
      reason: `"${text.trim()}" is no length. Type metres, such as 25, or feet, such as 82 ft.`,
    };
  return { ok: true, metres: /^(f|'|\u2032)/i.test(unit) ? feetToMetres(number) : number };
}
