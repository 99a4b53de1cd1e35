export type DecimalMark = '.' | ',';

/**
 * Which mark parts the decimals in a table's numbers. A mark before anything but three digits, or behind the other
 * one, shows it: 35,8 or 1.240,5. Where nothing shows it ("1,240"), commas are decimal in a table whose cells are
 * not parted by commas, as spreadsheets of countries with decimal commas write it.
 */
export function decimalMarkOf(numbers: readonly string[], delimiter: string): DecimalMark {
  const shows = (mark: string, other: string) => {
    const [m, o] = [`\\${mark}`, `\\${other}`];
    const pattern = new RegExp(
      `\\d${o}\\d{3}${m}\\d|^\\D*0?${m}\\d|^[^${mark}]*\\d${m}(\\d{1,2}|\\d{4,})(?!\\d|${m}|${o})`,
    );
    return numbers.some((text) => pattern.test(text));
  };
  const [comma, point] = [shows(',', '.'), shows('.', ',')];
  if (comma !== point) return comma ? ',' : '.';
  const pointSeen = numbers.some((text) => text.includes('.'));
  return delimiter !== ',' && !pointSeen ? ',' : '.';
}

/** A finite number of a table whose decimals are parted by `mark`; the other mark, spaces and apostrophes part thousands. */
export function numberIn(text: string, mark: DecimalMark): number | null {
  const thousands = mark === '.' ? ',' : '\\.';
  const plain = text
    .trim()
    .replace(/[\u2212\u2013]/g, '-')
    .replace(new RegExp(`(\\d)(?:${thousands}|[ \\u00a0\\u2009\\u202f'’])(?=\\d{3}(?!\\d))`, 'g'), '$1')
    .replace(mark, '.');
  const number = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(plain) ? Number(plain) : NaN;
  // What no double can hold (1e309) is no number of a table.
  return Number.isFinite(number) ? number : null;
}
