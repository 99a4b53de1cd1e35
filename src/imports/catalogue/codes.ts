import * as v from 'valibot';
import { fromDigits, toDigits } from './digits';
import { byFrequency } from './encode-parts';
import type { Numbers } from './types';

/** Short texts of letters and digits, as `toCodes` writes them. */
export const codesSchema = v.object({ shapes: v.string(), of: v.array(v.string()), signs: v.string() });
export type Codes = v.InferOutput<typeof codesSchema>;

/** Ends a shape in the list of them. */
const shapeEnd = ';';
const letter = 'A';
const digit = '0';

const shapeOf = (line: string) => line.replace(/[A-Z]/g, letter).replace(/[0-9]/g, digit);
const isFixed = (sign: string | undefined) => sign !== letter && sign !== digit;

/**
 * Codes of airfields (LAX, 7Q2, several in a line) taken apart: which shape each has (AAA, 0A0), then of each shape the first
 * sign of each code, the second, and so on. Neighbours share shapes and first letters and little else, and so kept each
 * sign costs about its five bits.
 */
export function toCodes(lines: readonly string[]): Codes {
  const odd = lines.find((line) => line.includes(shapeEnd));
  if (odd !== undefined) throw new Error(`expected a code without "${shapeEnd}", got ${odd}`);
  const shapes = byFrequency(lines.map(shapeOf));
  const members = membersOf(shapes.places, shapes.words.length);
  const signs = shapes.words.flatMap((shape, s) =>
    [...shape].flatMap((sign, k) =>
      isFixed(sign) ? [] : (members[s] ?? []).map((i) => lines[i]?.[k] ?? ''),
    ),
  );
  return {
    shapes: shapes.words.map((shape) => shape + shapeEnd).join(''),
    of: toDigits(shapes.places),
    signs: signs.join(''),
  };
}

/** The codes again, `count` of them; null where they are not what `toCodes` gives. */
export function fromCodes({ shapes, of, signs }: Codes, count: number): string[] | null {
  const places = fromDigits(of, count);
  const words = shapes.split(shapeEnd).slice(0, -1);
  if (places?.some((place) => place < 0 || place >= words.length) !== false) return null;
  const out = new Array<string>(count).fill('');
  let next = 0;
  for (const [s, members] of membersOf(places, words.length).entries())
    for (const sign of words[s] ?? '') {
      if (isFixed(sign)) for (const i of members) out[i] += sign;
      else for (const i of members) out[i] += signs[next++] ?? '';
    }
  return next === signs.length ? out : null;
}

/** For each shape, who has it. */
function membersOf(places: Numbers, shapes: number): number[][] {
  const members = Array.from({ length: shapes }, (): number[] => []);
  for (let i = 0; i < places.length; i++) members[places[i] as number]?.push(i);
  return members;
}
