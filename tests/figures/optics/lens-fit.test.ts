import { describe, expect, test } from 'vitest';
import { fitOf } from '../../../src/figures/optics/lens-fit';
import { reachFactor, reachOf, takenWith } from '../../../src/figures/optics/reach';
import { verdictFor } from '../../../src/figures/optics/verdict';
import { widestApertureAt } from '../../../src/figures/optics/widest-aperture';
import { lensToTake } from '../../../src/figures/summary/spot-summary';
import { contentsOf } from '../../support/contents';

const lenses = [
  { key: 'zoom', name: '100-400', shortest: 100, longest: 400, widestAperture: 4.5, widestApertureLong: 5.6 },
  { key: 'prime', name: '500', shortest: 500, longest: 500, widestAperture: 4, extenders: [2, 1.4] },
  { key: 'travel', name: '150-600', shortest: 150, longest: 600, widestAperture: 5, extenders: [1.4] },
];
const bodies = [{ key: 'b', sensorWidth: 36, sensorHeight: 24, pixelsWide: 6000, pixelsHigh: 4000 }];
const { kit, body } = contentsOf([], { kit: { fill: 0.8, bodies, lenses } });
const lens = (key: string) => {
  const found = kit.lenses.find((l) => l.key === key);
  if (!found) throw new Error(`expected a lens "${key}"`);
  return found;
};
const verdict = (key: string, needed: number, fill = 0.8) => verdictFor(lens(key), needed, body, fill);

describe('situations that photographers argue about', () => {
  test('[F600] 500.1 mm needed on a 500: it fits, nobody crops to 99 %', () => {
    expect(verdict('prime', 500.1)).toMatchObject({ verdict: 'fits', extender: null, focalLength: 500 });
  });

  test('[F601] a 150-600 with a 1.4x in the bag at 700 mm stays bare: the extender costs a stop and sharpness for a little size', () => {
    const bare = verdict('travel', 700);
    expect(bare).toMatchObject({ verdict: 'fits', extender: null, focalLength: 600, widestAperture: 5 });
    expect(bare.fillAt).toBeCloseTo((0.8 * 600) / 700, 12);
  });

  test('[F602] at 850 mm it takes the 1.4x after all: 600 would leave little more than half the frame', () => {
    const extended = verdict('travel', 850);
    expect(extended).toMatchObject({ verdict: 'fits', extender: 1.4, widestAperture: 7 });
    expect(extended.focalLength).toBeCloseTo(840, 9);
  });

  test('[F603] 450 mm needed with a 100-400 and a 500: both serve, the zoom a little loose, the prime a little full', () => {
    expect([verdict('zoom', 450).verdict, verdict('prime', 450).verdict]).toEqual(['fits', 'fits']);
  });

  test('[F604] 405 mm on a 500: tight, it is all in, but there is no margin left; 390 mm cuts off', () => {
    expect(verdict('prime', 405)).toMatchObject({ verdict: 'tight', extender: null });
    const cut = verdict('prime', 390);
    expect(cut).toMatchObject({ verdict: 'too-long', extender: null });
    expect(cut.verdict === 'too-long' && cut.cutOff).toBeCloseTo(1 - 390 / 400, 12);
  });

  test('[F605] 98 mm needed on a 100-400: it fits, and is not "too long"', () => {
    expect(verdict('zoom', 98)).toMatchObject({ verdict: 'fits', focalLength: 100, widestAperture: 4.5 });
  });

  test('[F606] 700 mm with a 500: the 1.4x, not the 2x, and it is f/5.6 then', () => {
    const { extender, focalLength, widestAperture } = verdict('prime', 700);
    expect([extender, Math.round(focalLength), widestAperture]).toEqual([1.4, 700, 5.6]);
  });

  test('[F607] 2,400 mm with a 500: too short with any extender; the 2x comes nearest, the crop is told by it', () => {
    const short = verdict('prime', 2400);
    expect(short).toMatchObject({ verdict: 'too-short', extender: 2, focalLength: 1000, widestAperture: 8 });
    expect(short.verdict === 'too-short' && [short.crop, short.pixelsAcross]).toEqual([1000 / 2400, 2000]);
  });

  test('[F608] who fills the frame to 0.98 on purpose gets "fits" there, and never "tight" first', () => {
    expect(verdict('prime', 500, 0.98).verdict).toBe('fits');
    expect(verdict('prime', 495, 0.98).verdict).toBe('tight');
  });
});

describe('the bounds', () => {
  test.each([
    [0.5999, 'too-short'],
    [0.6, 'fits'],
    [0.95, 'fits'],
    [0.951, 'tight'],
    [1, 'tight'],
    [1.001, 'too-long'],
  ] as const)('[F609] %s of the frame: %s', (filled, fit) => {
    expect(fitOf(filled, 0.8)).toBe(fit);
  });

  test('[F610] the reach of a 100-400 and a 500 with 1.4x goes without a gap from 80 to 933 mm', () => {
    const reach = reachOf({ ...kit, lenses: [lens('zoom'), { ...lens('prime'), extenders: [1.4] }] });
    for (let needed = 81; needed < 933; needed += 4) expect(reachFactor(reach, needed)).toBe(1);
    expect(reachFactor(reach, 940)).toBeCloseTo((700 / 0.75 / 940) ** 2, 9);
    expect(reachFactor(reach, 60)).toBeCloseTo((60 / 80) ** 2, 9);
    // Usable stays what can still be cropped to.
    expect(reach.usableTo).toBeCloseTo(1050, 9);
  });
});

describe('the lens to take', () => {
  const take = (needed: number, keys: readonly string[]) =>
    lensToTake(
      keys.map((key) => verdict(key, needed)),
      0.8,
    );

  test('[F611] the one that fills the frame as wanted, rather without extender, rather with room than tight', () => {
    expect(take(300, ['prime', 'zoom'])?.lens.key).toBe('zoom');
    expect(take(400, ['prime', 'zoom'])?.lens.key).toBe('zoom');
    expect(take(700, ['prime', 'travel'])?.lens.key).toBe('travel');
    expect(take(500, ['zoom', 'prime', 'travel'])?.lens.key).toBe('prime');
  });

  test('[F612] glare is judged by the frame of that very setting', () => {
    const reach = reachOf(kit);
    for (const needed of [98, 300, 405, 500, 640, 700, 850, 1200, 2400]) {
      const best = take(needed, ['zoom', 'prime', 'travel']);
      expect(takenWith(reach, needed)).toBeCloseTo(best?.focalLength ?? NaN, 9);
    }
    expect(takenWith(reachOf({ ...kit, lenses: [] }), 300)).toBe(0);
  });
});

describe('[F613] the widest aperture of a lens that opens less at its long end', () => {
  test('its ends are what is engraved, a third of the way up is between them', () => {
    const zoom = lens('zoom');
    expect(widestApertureAt(zoom, 100)).toBe(4.5);
    expect(widestApertureAt(zoom, 400)).toBeCloseTo(5.6, 12);
    // Half the zoom ratio is half the stops: 200 mm of 100 to 400.
    expect(widestApertureAt(zoom, 200)).toBeCloseTo(Math.sqrt(4.5 * 5.6), 12);
    expect(widestApertureAt(zoom, 560, 1.4)).toBeCloseTo(5.6 * 1.4, 12);
  });
  test('a lens with one number keeps it over its range', () => {
    expect(widestApertureAt(lens('travel'), 600)).toBe(5);
  });
});
