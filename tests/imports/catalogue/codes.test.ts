import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromCodes, toCodes } from '../../../src/imports/catalogue/codes';

describe('[I141] codes taken apart', () => {
  const lines = ['LAX', '', '7Q2', 'SEA', 'US-TX'];

  it('have their shapes, the most frequent first, and their signs one place after another', () => {
    const { shapes, signs } = toCodes(lines);
    expect(shapes).toBe('AAA;;0A0;AA-AA;');
    expect(signs).toBe('LSAEXA' + '7Q2' + 'USTX');
  });

  it('are whole again (seeded)', () => {
    const line = fc.stringMatching(/^([A-Z0-9@*-]{0,5}( [A-Z0-9]{2,4})?)?$/);
    fc.assert(
      fc.property(fc.array(line, { maxLength: 30 }), (codes) => {
        expect(fromCodes(toCodes(codes), codes.length)).toEqual(codes);
      }),
      { seed: 141, numRuns: 300 },
    );
  });

  it.each([
    ['of another number', toCodes(lines), 4],
    ['a sign short', { ...toCodes(lines), signs: 'LSAEXA7Q2UST' }, 5],
    ['a sign too many', { ...toCodes(lines), signs: 'LSAEXA7Q2USTXX' }, 5],
    ['of a shape that is not there', { ...toCodes(lines), shapes: 'AAA;;0A0;' }, 5],
  ])('%s are null', (_, codes, count) => {
    expect(fromCodes(codes, count)).toBe(null);
  });

  it('with the sign that ends a shape are refused when the catalogue is built', () => {
    expect(() => toCodes(['A;B'])).toThrow('expected a code without ";", got A;B');
  });
});
