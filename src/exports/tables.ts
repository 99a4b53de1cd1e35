import Papa from 'papaparse';
import type { ListEntries, ListName } from '../survey/kit-lists';
import { kitMembers, type Measure } from '../survey/kit-members';

/** The units of the survey file, in the headings of the table. */
const units: Readonly<Partial<Record<Measure, string>>> = {
  millimetres: 'mm',
  metres: 'm',
  'metres-per-second': 'm/s',
  gradient: 'm/m',
  degrees: '°',
  rpm: 'rpm',
};

/** Bodies, lenses or subjects as a table (RFC 4180, UTF-8 with byte order mark), which the import reads back. */
export function tableText<L extends ListName>(list: L, entries: readonly ListEntries[L][]): string {
  const members = kitMembers[list];
  const headings = members.map(({ name, measure }) => {
    const unit = units[measure];
    return unit === undefined ? name : `${name} (${unit})`;
  });
  const rows = entries.map((entry) => [
    escaped(entry.key),
    ...members.map(({ member }) => cell((entry as Readonly<Record<string, Cell>>)[member])),
  ]);
  return `\ufeff${Papa.unparse([['Key', ...headings], ...rows], { newline: '\r\n' })}\r\n`;
}

type Cell = string | number | readonly number[] | null | undefined;

function cell(value: Cell): string {
  if (value === null || value === undefined) return '';
  if (typeof value === 'object') return value.join(' ');
  return typeof value === 'string' ? escaped(value) : String(value);
}

/** A spreadsheet runs what looks like a formula; an apostrophe in front makes it text. */
const escaped = (text: string): string => text.replace(/^(?='*[=+\-@])/, "'");
