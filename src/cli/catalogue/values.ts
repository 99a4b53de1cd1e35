import type { Row } from './open-data';

type Value = Row[string] | undefined;

/** Text of one line without doubled spaces; empty for null. */
export const text = (value: Value): string =>
  typeof value === 'string' ? value.replace(/\s+/g, ' ').trim() : '';

/** A whole number, 0 for null. */
export const wholeNumber = (value: Value): number => Math.round(Number(value ?? 0));

/**
 * Degrees in whole millionths. Many coordinates have gone through a 32-bit number on their way (-70.0275 has become
 * -70.02749633...): the shortest decimal that gives the same 32-bit number is what was published.
 */
export function degrees(value: Value): number {
  const number = Number(value);
  if (Math.fround(number) === number) {
    for (let digits = 1; digits < 6; digits++) {
      const short = Number(number.toFixed(digits));
      if (Math.fround(short) === number) return short;
    }
  }
  return Math.round(number * 1e6) / 1e6;
}
