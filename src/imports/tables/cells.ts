import type { Column } from './columns';
import { numberIn, type DecimalMark } from './decimal-mark';
import { sizeOfUnit } from './measures';

export type CellReading =
  | { readonly ok: true; readonly value: string | number | readonly number[] | null }
  | { readonly ok: false; readonly reason: string };

/** What a cell says in the survey's unit; null when it is empty. */
export function readCell(text: string, column: Column, mark: DecimalMark): CellReading {
  if (text === '') return { ok: true, value: null };
  switch (column.measure) {
    case 'text':
      return { ok: true, value: unescaped(text) };
    case 'propulsion':
      return { ok: true, value: text.toLowerCase() };
    case 'factors':
      return readFactors(text, column, mark);
    default: {
      const value = readNumber(text, column, mark);
      return value === null ? notNumber(text, column) : { ok: true, value };
    }
  }
}

const notNumber = (text: string, { name }: Column): CellReading => ({
  ok: false,
  reason: `${name}: "${short(text)}" is no number in a unit that is known`,
});

/** "1.4 2", "1,4x; 2x": spaces and semicolons part them, commas too where they are not decimal. */
function readFactors(text: string, column: Column, mark: DecimalMark): CellReading {
  const parts = text.split(mark === '.' ? /[;/|,\s]+/ : /[;/|\s]+|,\s/).filter((part) => part !== '');
  const values = parts.map((part) => readNumber(part, column, mark));
  return values.some((value) => value === null)
    ? notNumber(text, column)
    : { ok: true, value: values.filter((value) => value !== null) };
}

/** A number with or without its unit, which goes before that of the heading: "62 kt", "f/5.6", "1.4×". */
function readNumber(text: string, { measure, size }: Column, mark: DecimalMark): number | null {
  const [, digits = '', unit = ''] =
    /^(?:f\/)?([+\-\u2212\u2013]?[\d.,\s'’\u00a0\u2009\u202f]+(?:e[+-]?\d+)?)(.*)$/is.exec(text) ?? [];
  const number = numberIn(digits, mark);
  const own = unit === '' ? size : sizeOfUnit(measure, unit);
  if (number === null || own === null) return null;
  // Without the last digits that a conversion makes up: 50 ft is 15.24 m, not 15.240000000000002 m.
  return own === 1 ? number : Number((number * own).toPrecision(12));
}

/** Our own tables put an apostrophe before a text that a spreadsheet would take for a formula. */
const unescaped = (text: string): string => text.replace(/^'(?='*[=+\-@])/, '');

export const short = (text: string): string => (text.length > 40 ? `${text.slice(0, 37)}...` : text);
