import { metresToFeet } from '../../units/length';
import { lineEnd } from './columns';

export const feet = (m: number) => Math.round(metresToFeet(m));

export const differences = (values: readonly number[]) =>
  values.map((value, i) => value - (values[i - 1] ?? 0));

/** Distinct values and the place of each among them. */
export function dictionary<T>(values: readonly T[]): { words: T[]; places: number[] } {
  return placed([...new Set(values)], values);
}

/** The same, the most frequent value first: its place costs least. */
export function byFrequency<T>(values: readonly T[]): { words: T[]; places: number[] } {
  const counts = new Map<T, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  const words = [...counts].sort((a, b) => b[1] - a[1]).map(([value]) => value);
  return placed(words, values);
}

function placed<T>(words: T[], values: readonly T[]): { words: T[]; places: number[] } {
  const at = new Map(words.map((word, i) => [word, i]));
  return { words, places: values.map((value) => at.get(value) ?? 0) };
}

/** Lines, each ended; what would end one in the middle becomes a comma. */
export const endedLines = (texts: readonly string[]) =>
  texts.map((text) => text.replaceAll('\n', ' ').replaceAll(lineEnd, ',') + lineEnd).join('');
