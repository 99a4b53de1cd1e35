import { describe, expect, it } from 'vitest';
import { lensWords, typedMinutes } from '../../../src/ui/plan/plan-words';

const lens = {
  key: 'zoom',
  name: '70–200 mm f/2.8',
  shortest: 70,
  longest: 200,
  widestAperture: 2.8,
  extenders: [1.4],
};
const fits = (extender: number | null) => ({
  lens,
  extender,
  focalLength: 200,
  widestAperture: 2.8,
  fillAt: 0.8,
  verdict: 'fits' as const,
});

describe('[F283] the lens for a window', () => {
  it('fits only at the best point where the focal lengths go beyond it', () => {
    const words = '70–200 mm f/2.8: 200 mm, f/2.8, fits';
    expect(lensWords(fits(null), { shortest: 190, longest: 390 })).toBe(`${words} at the best point`);
    expect(lensWords(fits(null), { shortest: 60, longest: 150 })).toBe(`${words} at the best point`);
    expect(lensWords(fits(null), { shortest: 70, longest: 200.3 })).toBe(words);
    expect(lensWords(fits(null), null)).toBe(words);
  });
  it('counts its extender', () => {
    expect(lensWords(fits(1.4), { shortest: 210, longest: 280 })).toMatch(/with 1.4×.*fits$/);
    expect(lensWords(fits(1.4), { shortest: 90, longest: 280 })).toMatch(/at the best point$/);
  });
});

it('[F284] minutes of a way: what is refused is said, with what counts until then', () => {
  expect(typedMinutes('25', 12)).toEqual({ minutes: 25 });
  expect(typedMinutes('0', 12)).toEqual({ minutes: 0 });
  expect(typedMinutes(' ', 12)).toEqual({ minutes: null });
  expect(typedMinutes('-5', 12)).toEqual({
    reason: '−5 is not taken: type 0 to 600 minutes. Until then 12 min count.',
  });
  expect(typedMinutes('601', 12)).toMatchObject({ reason: expect.stringMatching(/^601 is not/) as string });
});
