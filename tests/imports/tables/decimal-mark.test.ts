import { describe, expect, test } from 'vitest';
import { decimalMarkOf, numberIn } from '../../../src/imports/tables/decimal-mark';

describe('the decimal mark of a table', () => {
  test.each([
    ['one decimal behind a comma', ['1,240', '35,8'], ',', ','],
    ['a point that parts thousands before the comma', ['1.240,5'], ',', ','],
    ['a comma that parts thousands before the point', ['1,240.5'], ';', '.'],
    ['a nought before it', ['0,085'], ',', ','],
    ['four decimals', ['12.3456', '1,240'], ';', '.'],
    ['nothing, cells parted by semicolons', ['1,240'], ';', ','],
    ['nothing, cells parted by commas', ['1,240'], ',', '.'],
    ['nothing, with a point somewhere', ['1.240', '7'], ';', '.'],
    ['both: the usual one', ['35,8', '35.8'], ',', '.'],
    ['no decimals at all', ['36', '24'], ',', '.'],
  ] as const)('%s', (_what, numbers, delimiter, mark) => {
    expect(decimalMarkOf(numbers, delimiter)).toBe(mark);
  });
});

describe('a number of the table', () => {
  test.each([
    ['1,240', '.', 1240],
    ['1,240', ',', 1.24],
    ['1.240,5', ',', 1240.5],
    ["1'240.5", '.', 1240.5],
    ['1 240 000', '.', 1_240_000],
    ['−3,5', ',', -3.5],
    ['1e-3', '.', 0.001],
    ['.5', '.', 0.5],
  ] as const)('%s with %s is %d', (text, mark, value) => {
    expect(numberIn(text, mark)).toBe(value);
  });
  test.each([
    ['1.2.3', '.'],
    ['', '.'],
    ['1,5', '.'],
    ['twelve', ','],
    ['NaN', '.'],
    ['Infinity', '.'],
  ] as const)('"%s" with %s is none', (text, mark) => {
    expect(numberIn(text, mark)).toBeNull();
  });
});
