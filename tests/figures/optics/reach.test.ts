import { describe, expect, test } from 'vitest';
import { reachFactor, reachOf, takenWith } from '../../../src/figures/optics/reach';
import { verdictFor } from '../../../src/figures/optics/verdict';
import { contentsOf } from '../../support/contents';

const kit = {
  fill: 0.8,
  bodies: [{ key: 'b', sensorWidth: 36, sensorHeight: 24, pixelsWide: 6000, pixelsHigh: 4000 }],
  lenses: [
    { key: 'wide', shortest: 24, longest: 70, widestAperture: 2.8 },
    { key: 'long', shortest: 150, longest: 400, widestAperture: 5.6, extenders: [1.4, 2] },
    { key: 'prime', shortest: 500, longest: 500, widestAperture: 4 },
  ],
};
const contents = contentsOf([], { kit });
const reach = reachOf(contents.kit);
const lens = (key: string) => {
  const found = contents.kit.lenses.find((l) => l.key === key);
  if (!found) throw new Error(`expected a lens "${key}"`);
  return found;
};

describe('reach of a kit', () => {
  test('[F70] from the shortest lens to the longest, extenders included; usable to 1.5 times that', () => {
    expect(reach).toMatchObject({ shortest: 24, longest: 800, usableTo: 1200 });
  });

  test('[F71] 1 where a setting frames it, else the square of the shortfall of the nearest', () => {
    for (const needed of [24, 50, 70, 93, 120, 150, 399, 400, 500, 560, 800, 1066])
      expect(reachFactor(reach, needed)).toBe(1);
    expect(reachFactor(reach, 1600)).toBeCloseTo((800 / 0.75 / 1600) ** 2, 12);
    expect(reachFactor(reach, 12)).toBeCloseTo((12 / (0.8 * 24)) ** 2, 12);
    // In the gap between 70 / 0.75 and 0.8 x 150: cropping from 70 is worse than cutting off from 150 here, better there.
    expect(reachFactor(reach, 115)).toBeCloseTo((115 / 120) ** 2, 12);
    expect(reachFactor(reach, 95)).toBeCloseTo((70 / 0.75 / 95) ** 2, 12);
  });

  test('[F72] the picture is taken within the range of the kit', () => {
    expect(takenWith(reach, 3)).toBe(24);
    expect(takenWith(reach, 160)).toBe(160);
    expect(takenWith(reach, 4000)).toBe(800);
  });

  test('[F73] without lenses nothing is in reach', () => {
    const none = reachOf({ ...contents.kit, lenses: [] });
    expect(none).toMatchObject({ shortest: 0, longest: 0, usableTo: 0 });
    expect(reachFactor(none, 200)).toBe(0);
  });
});

describe('verdict for a lens', () => {
  const verdict = (key: string, needed: number) =>
    verdictFor(lens(key), needed, contents.body, contents.kit.fill);

  test('[F74] fits, alone before extended', () => {
    expect(verdict('long', 150)).toMatchObject({ verdict: 'fits', extender: null });
    expect(verdict('long', 400)).toMatchObject({ verdict: 'fits', extender: null });
    expect(verdict('long', 530)).toMatchObject({ verdict: 'fits', extender: null });
    expect(verdict('long', 540)).toMatchObject({ verdict: 'fits', extender: 1.4 });
    expect(verdict('long', 760)).toMatchObject({ verdict: 'fits', extender: 2 });
    expect(verdict('prime', 500)).toMatchObject({ verdict: 'fits', extender: null });
  });

  test('[F75] too short: how much is kept, and the pixels left across the subject', () => {
    // The longest setting with the longest extender, cropped to 800 / 1600 of the frame.
    expect(verdict('long', 1600)).toMatchObject({ verdict: 'too-short', crop: 0.5, pixelsAcross: 2400 });
    expect(verdict('wide', 280)).toMatchObject({ verdict: 'too-short', crop: 0.25, pixelsAcross: 1200 });
  });

  test('[F76] too long: what is cut off; tight as long as the frame still takes it', () => {
    // At 24 mm the subject takes 0.8 x 24 / 20 = 0.96 of the frame.
    expect(verdict('wide', 20)).toMatchObject({ verdict: 'tight' });
    // At 500 mm it takes 0.8 x 500 / 200 = twice the frame.
    const cut = verdict('prime', 200);
    expect(cut.verdict).toBe('too-long');
    expect(cut.verdict === 'too-long' && cut.cutOff).toBeCloseTo(0.5, 12);
  });
});
