import { readStatedEntry, type ListEntries, type ListName, type Misfit } from '../../survey/kit-lists';
import { kitMembers } from '../../survey/kit-members';
import { readCell, short } from './cells';
import { findColumns, type Column } from './columns';
import { readCsv, type CsvRow } from './csv';
import { decimalMarkOf, type DecimalMark } from './decimal-mark';
import { keyFor } from './keys';

export interface TableEntry<L extends ListName> {
  readonly row: number;
  readonly entry: ListEntries[L];
  /** Against the list as it is: not there yet, there otherwise, there just so. */
  readonly change: 'new' | 'replaces' | 'same';
}

export type TableReading<L extends ListName> =
  | {
      readonly ok: true;
      readonly entries: readonly TableEntry<L>[];
      /** Rows that are left out, and why. */
      readonly left: readonly { readonly row: number; readonly reason: string }[];
      /** What is odd about the table as a whole. */
      readonly remarks: readonly string[];
    }
  | { readonly ok: false; readonly reason: string };

/** Characters; a kit or list of subjects has some thousand. */
const longest = 2_000_000;
const titles = { bodies: 'bodies', lenses: 'lenses', subjects: 'subjects' } as const;

/**
 * Reads a table of bodies, lenses or subjects, of which `existing` are there already. Nothing is changed: the answer
 * says what would come in, what is left out, and why.
 */
export function readTable<L extends ListName>(
  list: L,
  text: string,
  existing: readonly ListEntries[L][],
): TableReading<L> {
  if (text.length > longest)
    return { ok: false, reason: `The file is too large for a table of ${titles[list]}.` };
  const { rows, delimiter, unclear } = readCsv(text);
  const [first, ...rest] = rows;
  if (!first) return { ok: false, reason: 'The table is empty.' };
  const { columns, remarks, missing } = findColumns(list, first.cells);
  if (missing.length > 0)
    return {
      ok: false,
      reason: `The table has no column for: ${missing.join(', ')}. Its first row must name the columns: ${['Key', ...kitMembers[list].map((m) => m.name)].join(', ')}.${remarks.length > 0 ? ` ${remarks.join(' ')}` : ''}`,
    };
  const mark = decimalMarkOf(numbersOf(rest, columns), delimiter);
  const entries: TableEntry<L>[] = [];
  const left: { row: number; reason: string }[] = [];
  for (const row of rest) {
    const reading = unclear.has(row.row)
      ? { ok: false as const, reason: 'a quotation mark is not closed' }
      : readRow(list, row, columns, mark, existing);
    if (!reading.ok) {
      left.push({ row: row.row, reason: reading.reason });
      continue;
    }
    const { entry } = reading;
    const twin = entries.find((e) => e.entry.key === entry.key);
    if (twin) left.push({ row: row.row, reason: `"${short(entry.key)}" stands in row ${twin.row} already` });
    else entries.push({ row: row.row, entry, change: changeOf(list, entry, existing) });
  }
  return { ok: true, entries, left, remarks };
}

type RowReading<L extends ListName> =
  { readonly ok: true; readonly entry: ListEntries[L] } | { readonly ok: false; readonly reason: string };

function readRow<L extends ListName>(
  list: L,
  { cells }: CsvRow,
  columns: readonly Column[],
  mark: DecimalMark,
  existing: readonly ListEntries[L][],
): RowReading<L> {
  const said: Record<string, unknown> = {};
  const typed = new Map<string, string>();
  for (const column of columns) {
    const text = cells[column.index] ?? '';
    const cell = readCell(text, column, mark);
    if (!cell.ok) return cell;
    said[column.member] = cell.value;
    typed.set(column.member, text);
  }
  const key = keyFor(said['key'], said['name'], existing);
  if (key === null) return { ok: false, reason: 'it has neither a key nor a name' };
  // What the table has no column for stays as it is.
  const reading = readStatedEntry(list, { ...existing.find((e) => e.key === key), ...said, key });
  if (reading.ok) return reading;
  const reasons = reading.misfits.map((misfit) => reasonOf(list, misfit, typed.get(misfit.member) ?? ''));
  return { ok: false, reason: reasons.join('; ') };
}

function reasonOf(list: ListName, { member, expected }: Misfit, text: string): string {
  const name = kitMembers[list].find((m) => m.member === member)?.name ?? member;
  return text === ''
    ? `${name} is missing`
    : `${name}: "${short(text)}" does not fit, ${expected} is expected`;
}

function changeOf<L extends ListName>(
  list: L,
  entry: ListEntries[L],
  existing: readonly ListEntries[L][],
): TableEntry<L>['change'] {
  const old = existing.find((e) => e.key === entry.key);
  if (!old) return 'new';
  const same = kitMembers[list].every(({ member }) => isSame(old[member], entry[member]));
  return same ? 'same' : 'replaces';
}

/** Values of members; factors are lists of numbers. */
const isSame = (a: unknown, b: unknown): boolean =>
  Array.isArray(a) && Array.isArray(b) ? a.join(' ') === b.join(' ') : a === b;

const numbersOf = (rows: readonly CsvRow[], columns: readonly Column[]): readonly string[] =>
  rows.flatMap(({ cells }) =>
    columns
      .filter(({ measure }) => measure !== 'text' && measure !== 'propulsion' && measure !== 'factors')
      .map(({ index }) => cells[index] ?? ''),
  );
