import { feetToMetres, type LengthUnit } from './length';
import { parseNumber } from './number';

export type LengthReading =
  { readonly ok: true; readonly metres: number } | { readonly ok: false; readonly reason: string };

/** A length or height as typed, in `bare` where no unit stands behind the number. */
export function parseLength(text: string, bare: LengthUnit = 'm'): LengthReading {
  const [, digits = '', unit = ''] =
    /^(.*?)\s*(m|metres?|meters?|ft|feet|foot|['\u2032])?\.?$/iu.exec(text.trim()) ?? [];
  const number = parseNumber(digits);
  if (number === null)
    return {
      ok: false,
      reason: `"${text.trim()}" is no length. ${examples[bare]}`,
    };
  const meant = unit === '' ? bare : /^m/i.test(unit) ? 'm' : 'ft';
  return { ok: true, metres: meant === 'ft' ? feetToMetres(number) : number };
}

const examples: Record<LengthUnit, string> = {
  m: 'Type metres, such as 25, or feet, such as 82 ft.',
  ft: 'Type feet, such as 82, or metres, such as 25 m.',
};
