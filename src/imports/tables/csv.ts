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

/** Reads the rows of a table (RFC 4180); what parts its cells is seen from its first row that has a mark. Blank rows are left out. */
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

/** The mark that stands most often outside quotes in the first row that has any: a title has none. */
function delimiterOf(text: string): string {
  const rows = text
    .slice(0, 10_000)
    .split(/[\r\n]+/)
    .map((row) => row.replace(/"[^"]*"/g, ''));
  const bare = rows.find((row) => /[,;\t|]/.test(row)) ?? '';
  const count = (mark: string) => bare.split(mark).length;
  return delimiters.reduce((best, mark) => (count(mark) > count(best) ? mark : best), ',');
}
