import { describe, expect, it } from 'vitest';
import { servedBy } from '../../../src/figures/optics/lens-fit';
import { framedWords, lensWords, typedMinutes } from '../../../src/ui/plan/plan-words';

const lens = {
  key: 'zoom',
  name: '70–200 mm f/2.8',
  shortest: 70,
  longest: 200,
  widestAperture: 2.8,
  extenders: [1.4],
};
const fits = (extender: number | null) => ({
  take: { lens, extender, focalLength: 200, widestAperture: 2.8, fillAt: 0.8, verdict: 'fits' as const },
  served: servedBy({ shortest: 70 * (extender ?? 1), longest: 200 * (extender ?? 1) }, 0.8),
});

describe('[F283] the lens for a window', () => {
  it('fits only at the best point where the focal lengths go beyond it', () => {
    const words = '70–200 mm f/2.8: 200 mm, f/2.8, fits';
    expect(lensWords(fits(null), { shortest: 190, longest: 268 })).toBe(`${words} at the best point`);
    expect(lensWords(fits(null), { shortest: 55, longest: 150 })).toBe(`${words} at the best point`);
    expect(lensWords(fits(null), { shortest: 56, longest: 266.7 })).toBe(words);
    expect(lensWords(fits(null), null)).toBe(words);
  });
  it('a prime serves a band: nothing is said of the best point within it', () => {
    const prime = { ...lens, name: '500 mm f/4', shortest: 500, longest: 500 };
    const take = { ...fits(null).take, lens: prime, focalLength: 500, widestAperture: 4 };
    const served = servedBy({ shortest: 500, longest: 500 }, 0.8);
    expect(lensWords({ take, served }, { shortest: 430, longest: 640 })).toBe(
      '500 mm f/4: 500 mm, f/4, fits',
    );
    expect(lensWords({ take, served }, { shortest: 430, longest: 700 })).toMatch(/at the best point$/);
  });
  it('counts its extender', () => {
    expect(lensWords(fits(1.4), { shortest: 210, longest: 280 })).toMatch(/with 1.4×.*fits$/);
    expect(lensWords(fits(1.4), { shortest: 70, longest: 280 })).toMatch(/at the best point$/);
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

describe('[F1116] what an act is framed for', () => {
  const due = (kind: 'known' | 'unknown' | 'unsaid') =>
    ({ act: { type: { kind } } }) as unknown as Parameters<typeof framedWords>[0][number];
  it('is its own type, or said to be the aircraft at hand and why', () => {
    expect(framedWords([due('known')], { name: 'Jet' })).toBe('framed for Jet');
    expect(framedWords([due('unknown')], { name: 'A320' })).toBe('framed for A320: type not known');
    expect(framedWords([due('unsaid'), due('unsaid')], { name: 'A320' })).toBe(
      'framed for A320: no type given',
    );
    expect(framedWords([due('unsaid'), due('unknown')], { name: 'A320' })).toBe(
      'framed for A320: no type given; framed for A320: type not known',
    );
  });
});
