import Papa from 'papaparse';

/** Some rows of a table that belong together. */
export interface CsvPiece {
  readonly rows: readonly (readonly string[])[];
  /** Indices of rows in which a quote is never closed, or has something behind it. */
  readonly unclear: readonly number[];
  /** Where in the text the piece ends. */
  readonly end: number;
}

/** Characters that are read in one go: a few milliseconds. */
const chunk = 16_000;
/** Characters that a quoted cell with lines of its own may have: a longer one is a quote that nobody closed. */
const longestQuoted = 4000;

/**
 * A table piece by piece (RFC 4180). Pieces end with a line and not inside a quoted cell. Where a quote is never closed,
 * or has something behind it, every line is a row of its own: one slip costs one row, not the rest of the table.
 */
export function* csvPieces(text: string, delimiter: string): Generator<CsvPiece> {
  const [newline = '\n'] = /\r(?!\n)|\n/.exec(text) ?? [];
  let from = 0;
  while (from < text.length) {
    const stop = pieceEnd(text, from, newline);
    yield { ...rowsOf(text.slice(from, stop), delimiter, newline), end: Math.min(stop + 1, text.length) };
    from = stop + 1;
  }
}

/** Where a piece stops: at the first line end behind `chunk` characters at which every quote is closed. */
function pieceEnd(text: string, from: number, newline: string): number {
  const first = text.indexOf(newline, from + chunk);
  if (first === -1) return text.length;
  let open = false;
  let counted = from;
  for (
    let stop = first;
    stop !== -1 && stop <= first + longestQuoted;
    stop = text.indexOf(newline, stop + 1)
  ) {
    for (
      let quote = text.indexOf('"', counted);
      quote !== -1 && quote < stop;
      quote = text.indexOf('"', counted)
    ) {
      open = !open;
      counted = quote + 1;
    }
    if (!open) return stop;
  }
  return first;
}

function rowsOf(piece: string, delimiter: string, newline: string): Pick<CsvPiece, 'rows' | 'unclear'> {
  const whole = Papa.parse<string[]>(piece, { delimiter });
  if (!whole.errors.some(isQuote)) return { rows: whole.data, unclear: [] };
  const lines = piece.split(newline).map((line) => Papa.parse<string[]>(line, { delimiter }));
  return {
    rows: lines.map(({ data }) => data[0] ?? ['']),
    unclear: lines.flatMap(({ errors }, i) => (errors.some(isQuote) ? [i] : [])),
  };
}

const isQuote = ({ type }: Papa.ParseError): boolean => type === 'Quotes';
