import { expect, it } from 'vitest';
import type { SectorRun } from '../../../src/figures/types';
import { usableSpan } from '../../../src/ui/viewfinder/usable-span';

const run = (from: number, samples: number): SectorRun => {
  const each = Array.from({ length: samples }, () => 1);
  return {
    from,
    bearings: each,
    lightAngles: each,
    glare: each.map(() => false),
    focalLengths: each,
    totals: each,
  };
};
const seen = (...runs: SectorRun[]) => ({ sector: { runs } });

it('[U965] goes from the first usable sample to the last, over what is hidden between them', () => {
  expect(usableSpan(seen(run(40, 11)), 500)).toEqual({ from: 40, to: 50 });
  expect(usableSpan(seen(run(40, 11), run(80, 3)), 500)).toEqual({ from: 40, to: 82 });
});
it('[U966] is the whole path where nothing of it is usable, and one sample where it has one', () => {
  expect(usableSpan(seen(), 500)).toEqual({ from: 0, to: 499 });
  expect(usableSpan(undefined, 1)).toEqual({ from: 0, to: 0 });
  expect(usableSpan(seen(run(0, 1)), 1)).toEqual({ from: 0, to: 0 });
});
