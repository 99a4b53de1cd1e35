import { encode } from 'uqr';

/** Bytes of a link that a phone's camera still reads off a screen. Common practice, no source. */
const longestForQr = 1200;
/** Modules of white round the code: ISO/IEC 18004 asks for four. */
const quiet = 4;

export interface QrCode {
  /** Modules along a side, the quiet zone included. */
  readonly size: number;
  /** An SVG path, one unit a module, of the dark ones. */
  readonly path: string;
}

/** The code of a text, null where it has more than 1,200 bytes. */
export function qrCode(text: string): QrCode | null {
  if (new TextEncoder().encode(text).length > longestForQr) return null;
  const { data, size } = encode(text, { ecc: 'L', border: quiet });
  const rows = data.flatMap((row, y) =>
    runsOf(row).map(([x, length]) => `M${x} ${y}h${length}v1h-${length}z`),
  );
  return { size, path: rows.join('') };
}

/** Where dark modules begin in a row, and how many follow one another. */
function runsOf(row: readonly boolean[]): readonly (readonly [number, number])[] {
  const runs: [number, number][] = [];
  row.forEach((dark, x) => {
    const last = runs.at(-1);
    if (!dark) return;
    if (last && last[0] + last[1] === x) last[1]++;
    else runs.push([x, 1]);
  });
  return runs;
}
