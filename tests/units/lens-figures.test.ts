import { describe, expect, test } from 'vitest';
import { parseApertures, parseFocalLengths } from '../../src/units/lens-figures';

describe('[F615] a lens by one number or two, as it is engraved', () => {
  test.each([
    ['500', 500, 500],
    ['100-400', 100, 400],
    ['150–600 mm', 150, 600],
    ['24 to 70', 24, 70],
    ['400-100', 100, 400],
  ])('%s', (text, shortest, longest) => {
    expect(parseFocalLengths(text)).toEqual({ shortest, longest });
  });
  test.each([
    ['4', 4, null],
    ['f/2.8', 2.8, null],
    ['4.5-5.6', 4.5, 5.6],
    ['f/5–6.3', 5, 6.3],
    ['1:4.5-5.6', 4.5, 5.6],
    ['5.6-5.6', 5.6, null],
  ])('%s', (text, widest, long) => {
    expect(parseApertures(text)).toEqual({ widest, long });
  });
  test.each(['', 'long', '100-200-300', '-400', '0'])('"%s" is no lens', (text) => {
    expect(parseFocalLengths(text)).toBeNull();
    expect(parseApertures(text)).toBeNull();
  });
});
