import type { Mapping } from './columns';
import { readTypedMovement } from './typed-movement';

export interface TypedLines {
  readonly headings: readonly string[];
  readonly rows: readonly {
    readonly row: number;
    readonly cells: readonly string[];
    readonly starred: boolean;
  }[];
  readonly mapping: Mapping;
}

const headings = ['Time', 'Arrival or departure', 'Type', 'Flight', 'From or to', 'Runway'];
const mapping: Mapping = { time: 0, date: null, use: 1, type: 2, flight: 3, from: 4, to: null, runway: 5 };

/** Lines as they are typed one by one ("1425 a A320 ZZ123 Oskin"), as rows of a table; null when none is such a line. */
export function readTypedLines(text: string): TypedLines | null {
  const lines = text
    .split(/\r?\n/)
    .map((line, i) => ({ row: i + 1, line: line.trim() }))
    .filter(({ line }) => line !== '');
  if (!lines.some(({ line }) => readTypedMovement(line, null).ok)) return null;
  return { headings, rows: lines.map(({ row, line }) => ({ row, ...cellsOf(line) })), mapping };
}

/** The time stays as it was typed, so that "1425Z" keeps its zone. */
function cellsOf(line: string): { cells: readonly string[]; starred: boolean } {
  const [time = '', ...rest] = line.split(/\s+/).filter((word) => word !== '*');
  const asTyped = readTypedMovement(line, null);
  // A line that does not say which it is may still be told for all of them.
  const read = asTyped.ok ? asTyped : readTypedMovement([time, 'a', ...rest].join(' '), null);
  if (!read.ok) return { cells: [line], starred: false };
  const { use, type, flight, place, runway } = read.movement;
  const cells = [time, asTyped.ok ? use : '', type, flight, place, runway];
  return { cells, starred: line.split(/\s+/).includes('*') };
}
