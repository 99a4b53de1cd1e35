import fc from 'fast-check';
import { expect, test } from 'vitest';
import { alongCurve, placesOnCurve, wholeCurve } from '../../../src/imports/catalogue/along-curve';

const placeAt = (along: number): [number, number] => {
  const { lng, lat } = placesOnCurve(Float64Array.of(along));
  return [lng[0] ?? NaN, lat[0] ?? NaN];
};

test('[I140] the curve begins in the south-west and visits every field by steps of one (seeded)', () => {
  expect(placeAt(0)).toEqual([-1_800_000, -900_000]);
  fc.assert(
    fc.property(
      fc.maxSafeNat().map((n) => n % (wholeCurve - 1)),
      (along) => {
        const [a, b] = [placeAt(along), placeAt(along + 1)];
        expect(Math.abs(a[0] - b[0]) + Math.abs(a[1] - b[1])).toBe(1);
      },
    ),
    { seed: 1891, numRuns: 2000 },
  );
});

test('[I140] a place is found again from how far along it is (seeded)', () => {
  const place = fc.tuple(
    fc.integer({ min: -1_800_000, max: 1_800_000 }),
    fc.integer({ min: -900_000, max: 900_000 }),
  );
  fc.assert(
    fc.property(place, (where) => {
      expect(placeAt(alongCurve(where))).toEqual(where);
    }),
    { seed: 1891, numRuns: 2000 },
  );
});
