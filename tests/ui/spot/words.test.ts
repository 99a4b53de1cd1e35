import { describe, expect, it } from 'vitest';
import { readPreferences } from '../../../src/state/preferences.svelte';
import { formatsFor } from '../../../src/ui/formats';
import { aspectWords, sideWords, verdictWords } from '../../../src/ui/spot/words';

const format = formatsFor(readPreferences(null));

const lens = {
  key: 'long',
  name: '100–400 mm',
  shortest: 100,
  longest: 400,
  widestAperture: 5.6,
  extenders: [1.4],
};

describe('verdicts', () => {
  it('say what fits, and with what', () => {
    expect(verdictWords({ lens, verdict: 'fits', extender: null }, 0.8)).toBe('fits');
    expect(verdictWords({ lens, verdict: 'fits', extender: 1.4 }, 0.8)).toBe('fits with the 1.4× extender');
  });
  it('say what a lens that is too short leaves', () => {
    const words = verdictWords({ lens, verdict: 'too-short', crop: 0.621, pixelsAcross: 2980 }, 0.8);
    expect(words).toBe('too short: crop to 62 %, up to 2,980 px across');
  });
  it('do not ask for a crop to the whole', () => {
    const just = (crop: number) =>
      verdictWords({ lens, verdict: 'too-short', crop, pixelsAcross: 4790 }, 0.8);
    expect([just(0.999), just(0.995)]).toEqual(['fits, just', 'fits, just']);
    expect(just(0.994)).toBe('too short: crop to 99 %, up to 4,790 px across');
  });
  it('say what a lens that is too long cuts off, or that it only fills more than wanted', () => {
    expect(verdictWords({ lens, verdict: 'too-long', cutOff: 0.117 }, 0.8)).toBe('too long: cuts off 12 %');
    expect(verdictWords({ lens, verdict: 'too-long', cutOff: 0 }, 0.75)).toBe(
      'too long: fills more than the wanted 75 %',
    );
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
