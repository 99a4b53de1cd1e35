import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromDigits, toDigits } from '../../../src/imports/catalogue/digits';

describe('numbers as digits', () => {
  it('[C13] puts the lowest digits first, signs into the lowest bit', () => {
    // 0, -1, 1 are 0, 1, 2; 32 is 64: one of the second digit and none of the first.
    expect(toDigits([0, -1, 1, 32])).toEqual(['ABCA', 'AAAB']);
    expect(toDigits([])).toEqual([]);
    expect(toDigits([0, 0])).toEqual([]);
  });

  it('[C13] gives back what went in (seeded)', () => {
    const values = fc.array(fc.integer({ min: -500_000_000, max: 500_000_000 }));
    fc.assert(
      fc.property(values, (numbers) => {
        expect([...(fromDigits(toDigits(numbers), numbers.length) ?? [])]).toEqual(numbers);
      }),
      { seed: 64, numRuns: 300 },
    );
  });

  it.each([
    ['a text too short', ['AB'], 3],
    ['a sign that is none', ['A*'], 2],
    ['a letter beyond ASCII', ['Aé'], 2],
    ['more digits than a column can hold', ['A', 'A', 'A', 'A', 'A', 'A', 'A', 'A', 'A'], 1],
  ])('[C13] %s is null', (_, planes, count) => {
    expect(fromDigits(planes, count)).toBe(null);
  });
});
