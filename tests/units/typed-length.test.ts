import { describe, expect, test } from 'vitest';
import { parseNumber, typedNumber } from '../../src/units/number';
import { parseLength } from '../../src/units/typed-length';

describe('numbers as typed', () => {
  test.each([
    ['1240', 1240],
    ['1,240', 1240],
    ['1 240', 1240],
    ['12,345.6', 12345.6],
    ['15.24', 15.24],
    ['15,24', 15.24],
    ['−2.5', -2.5],
    ['.5', 0.5],
  ])('%s', (text, value) => {
    expect(parseNumber(text)).toBe(value);
  });
  test.each(['', '-', 'twelve', '1.2.3', '1,2,3', '12 m', '1 24'])('"%s" is no number', (text) => {
    expect(parseNumber(text)).toBeNull();
  });
  test('a field shows a number ready to be changed', () => {
    expect([1240.449, -0.004, 0.65].map((n) => typedNumber(n, 1))).toEqual(['1240.4', '0', '0.7']);
  });
});

describe('lengths as typed', () => {
  test.each([
    ['25', 25],
    ['25 m', 25],
    ['-3.5m', -3.5],
    ['1,240 metres', 1240],
    ['100 ft', 30.48],
    ['50ft', 15.24],
    ['1,000 feet', 304.8],
    ["10'", 3.048],
  ])('%s', (text, metres) => {
    expect(parseLength(text)).toEqual({ ok: true, metres: expect.closeTo(metres, 9) as number });
  });
  test('what is no length is answered with the mend', () => {
    expect(parseLength('12 yards')).toMatchObject({
      ok: false,
      reason: expect.stringMatching(/12 yards.*ft/) as string,
    });
    expect(parseLength('')).toMatchObject({ ok: false });
  });
});
