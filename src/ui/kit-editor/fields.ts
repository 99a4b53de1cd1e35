import type { Measure } from '../../survey/kit-members';
import { parseDegrees } from '../../units/angle';
import { parseNumber, typedNumber } from '../../units/number';
import type { Formats } from '../formats';

/** What a form's field is measured in: two ends of a range may be typed as one. */
export type FormMeasure = Measure | 'focal-lengths' | 'apertures';

export type FieldReading =
  | { readonly ok: true; readonly value: string | number | readonly number[] | null }
  | { readonly ok: false; readonly reason: string };

/** What a field shows of a value; empty for one that is not there. */
export function fieldText(measure: Measure, value: unknown, format: Formats): string {
  if (typeof value === 'string') return value;
  if (Array.isArray(value)) return value.join(' ');
  if (typeof value !== 'number') return '';
  switch (measure) {
    case 'metres':
      return format.typedLength(value);
    case 'metres-per-second':
      return format.typedSpeed(value);
    case 'gradient':
      return typedNumber(value * 100, 2);
    default:
      return typedNumber(value, 4);
  }
}

/** The unit that a field's label names; "" for none. */
export function fieldUnit(measure: FormMeasure, format: Formats): string {
  switch (measure) {
    case 'metres':
      return format.lengthUnit;
    case 'metres-per-second':
      return format.speedUnit;
    default:
      return plainUnits[measure] ?? '';
  }
}

const plainUnits: Readonly<Partial<Record<FormMeasure, string>>> = {
  'focal-lengths': 'mm',
  apertures: 'f-number',
  millimetres: 'mm',
  'f-number': 'f-number',
  gradient: '% rise over run',
  degrees: '°',
  rpm: 'rpm',
};

/** What was typed into a field, in the survey's unit; null for an empty one. */
export function readField(measure: Measure, text: string, format: Formats): FieldReading {
  if (text === '') return { ok: true, value: null };
  switch (measure) {
    case 'text':
    case 'propulsion':
      return { ok: true, value: text };
    case 'metres': {
      const reading = format.readLength(text);
      // To the millimetre: 50 ft is 15.24 m, not 15.240000000000002 m.
      return reading.ok ? { ok: true, value: Number(reading.metres.toFixed(3)) } : reading;
    }
    case 'metres-per-second': {
      const reading = format.readSpeed(text);
      return reading.ok ? { ok: true, value: Number(reading.metresPerSecond.toFixed(4)) } : reading;
    }
    case 'factors':
      return readFactors(text);
    default:
      return readNumber(measure, text);
  }
}

function readNumber(measure: Measure, text: string): FieldReading {
  const bare = text.replace(/^f\s*\/\s*/i, '').replace(/\s*(mm|px|pixels|rpm|%)$/i, '');
  const number = measure === 'degrees' ? parseDegrees(bare) : parseNumber(bare);
  if (number === null)
    return { ok: false, reason: `"${text}" is no number. Type digits, such as ${examples[measure] ?? '4'}.` };
  return { ok: true, value: measure === 'gradient' ? Number((number / 100).toFixed(6)) : number };
}

const examples: Readonly<Partial<Record<Measure, string>>> = {
  millimetres: '400',
  'f-number': '5.6',
  gradient: '8.5',
  degrees: '3',
  rpm: '2400',
};

/** "1.4 2", "1.4x, 2x". */
function readFactors(text: string): FieldReading {
  const values = text
    .split(/[;\s]+|,\s|,$/)
    .filter((part) => part !== '')
    .map((part) => parseNumber(part.replace(/[x×]$/i, '')));
  return values.every((value) => value !== null)
    ? { ok: true, value: values }
    : {
        ok: false,
        reason: `"${text}" cannot be read. Type factors with spaces between them, such as 1.4 2.`,
      };
}
