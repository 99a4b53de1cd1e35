import { describe, expect, it } from 'vitest';
import { readPreferences } from '../../../src/state/preferences.svelte';
import { formatsFor } from '../../../src/ui/formats';
import { aspectWords, sideWords, takeWords, verdictWords } from '../../../src/ui/words/sample-words';

const format = formatsFor(readPreferences(null));

const lens = {
  key: 'long',
  name: '100–400 mm',
  shortest: 100,
  longest: 400,
  widestAperture: 5.6,
  extenders: [1.4],
};

const setting = { lens, extender: null, focalLength: 400, widestAperture: 5.6, fillAt: 0.8 };

describe('verdicts name the setting and what it opens to', () => {
  it('say what fits, and with what', () => {
    expect(verdictWords({ ...setting, verdict: 'fits' })).toBe('fits at 400 mm, f/5.6');
    const extended = { ...setting, extender: 1.4, focalLength: 560, widestAperture: 7.84 };
    expect(verdictWords({ ...extended, verdict: 'fits' })).toBe('fits with 1.4×, 560 mm, f/7.8');
    expect(takeWords({ ...extended, verdict: 'fits' })).toBe('100–400 mm with 1.4×: 560 mm, f/7.8, fits');
  });
  it('say what a lens that is too short leaves', () => {
    const words = verdictWords({ ...setting, verdict: 'too-short', crop: 0.621, pixelsAcross: 2980 });
    expect(words).toBe('too short at 400 mm, f/5.6: crop to 62 %, up to 2,980 px across');
  });
  it('say what a lens that is too long cuts off, and when there is no margin', () => {
    const short = { ...setting, focalLength: 100 };
    expect(verdictWords({ ...short, verdict: 'too-long', cutOff: 0.117 })).toBe(
      'too long at 100 mm, f/5.6: cuts off 12 %',
    );
    expect(takeWords({ ...short, verdict: 'tight' })).toBe(
      '100–400 mm: 100 mm, f/5.6, tight, hardly a margin',
    );
  });
  it('name a lens without a name by its figures', () => {
    expect(
      takeWords({
        ...setting,
        lens: { ...lens, name: ' ', widestAperture: 4.5, widestApertureLong: 5.6 },
        verdict: 'fits',
      }),
    ).toBe('100–400 mm f/4.5–5.6: 400 mm, f/5.6, fits');
  });
});

it('names the side by the compass, and none on the line', () => {
  const runway = {
    id: 'r',
    centrelineDistance: 1312.4,
    side: 'left',
    compassSide: 'north-east',
    station: 40,
  };
  expect(sideWords({ ...runway, side: 'left' }, format)).toBe('1,312 m, north-east side');
  expect(sideWords({ ...runway, centrelineDistance: 0.2, side: null, compassSide: null }, format)).toBe(
    'on the centreline',
  );
});

it('says from where one sees the aircraft', () => {
  expect([8, 50, 92, 140, 171].map(aspectWords)).toEqual([
    'from ahead',
    'three-quarters from ahead',
    'side-on',
    'three-quarters from behind',
    'from behind',
  ]);
});
