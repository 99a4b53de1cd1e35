import fc from 'fast-check';
import { expect, it } from 'vitest';
import { medianIn } from '../../../src/figures/geometry/median-in';

it('[F1202] the median of any list is that of the sorted one', () => {
  expect(medianIn(Float64Array.of())).toBeNaN();
  const anyOrder = fc.array(
    fc.oneof(fc.integer({ min: -3, max: 3 }), fc.double({ noNaN: true, min: -1e6, max: 1e6 })),
    {
      minLength: 1,
      maxLength: 60,
    },
  );
  fc.assert(
    fc.property(anyOrder, (list) => {
      const sorted = list.toSorted((a, b) => a - b);
      const half = (sorted.length - 1) / 2;
      const middle = ((sorted[Math.floor(half)] as number) + (sorted[Math.ceil(half)] as number)) / 2;
      expect(medianIn(Float64Array.from(list))).toBeCloseTo(middle, 9);
    }),
  );
});
