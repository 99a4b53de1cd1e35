import { csvPieces } from './csv-pieces';

export interface CsvRow {
  /** As a spreadsheet counts: the first row of the file is 1, blank ones count. */
  readonly row: number;
  readonly cells: readonly string[];
}

export interface Csv {
  readonly delimiter: string;
  readonly rows: readonly CsvRow[];
  /** Rows in which a quote is never closed, or has something behind it. */
  readonly unclear: ReadonlySet<number>;
}

const delimiters = [',', ';', '\t', '|'] as const;

/** Reads the rows of a table (RFC 4180); what parts its cells is seen from its first row. Blank rows are left out. */
export function readCsv(text: string): Csv {
  const [, stated, body = ''] = /^\ufeff?(?:sep=(.)\r?\n)?([^]*)$/.exec(text) ?? [];
  const delimiter = stated ?? delimiterOf(body);
  const rows: CsvRow[] = [];
  const unclear = new Set<number>();
  let row = stated === undefined ? 1 : 2;
  for (const piece of csvPieces(body, delimiter)) {
    for (const i of piece.unclear) unclear.add(row + i);
    for (const cells of piece.rows) {
      const trimmed = cells.map((cell) => cell.trim());
      if (trimmed.some((cell) => cell !== '')) rows.push({ row, cells: trimmed });
      row++;
    }
  }
  return { delimiter, rows, unclear };
}

/** The mark that stands most often in the first row outside quotes. */
function delimiterOf(text: string): string {
  const [first = ''] = /[^\r\n]+/.exec(text) ?? [];
  const bare = first.replace(/"[^"]*"/g, '');
  const count = (mark: string) => bare.split(mark).length;
  return delimiters.reduce((best, mark) => (count(mark) > count(best) ? mark : best), ',');
}
