import * as v from 'valibot';
import { kitFields } from '../../survey/schema/kit';
import { parseNumber } from '../../units/number';

type FillReading =
  { readonly ok: true; readonly fill: number } | { readonly ok: false; readonly reason: string };

/** The share of the frame to fill as typed, in per cent; the survey has it from 0 to 1. */
export function readFill(text: string): FillReading {
  const percent = parseNumber(text.trim().replace(/\s*%$/, ''));
  const fill = percent === null ? null : Number((percent / 100).toFixed(4));
  if (fill === null || !v.is(kitFields.fill, fill))
    return {
      ok: false,
      reason: `Fill of the frame cannot be "${text.trim()}". Type per cent from 5 to 100.`,
    };
  return { ok: true, fill };
}
