import { describe, expect, test } from 'vitest';
import { lightClass } from '../../src/figures/light/light-class';
import {
  angleFactor,
  angleFactorBy,
  aspectFactor,
  aspectFactorBy,
  hazeBy,
  hazeFactor,
  hazeOf,
  lightCeiling,
  lightFactor,
} from '../../src/figures/score';

const hair = 1e-9;

describe('light classes at their edges', () => {
  test('[F60] by the sun first: dark, civil twilight, top light', () => {
    expect(lightClass(-6 - hair, 10, true)).toBe('dark');
    expect(lightClass(-6, 10, true)).toBe('civil-twilight');
    expect(lightClass(-0.833 - hair, 170, false)).toBe('civil-twilight');
    expect(lightClass(-0.833, 10, true)).toBe('front-lit');
    expect(lightClass(60 - hair, 170, null)).toBe('back-lit');
    expect(lightClass(60, 170, null)).toBe('top-lit');
    // Harsh from 45, but no class of its own.
    expect(lightClass(50, 10, true)).toBe('front-lit');
  });

  test('[F61] then by the angle and the flank', () => {
    expect(lightClass(20, 0, null)).toBe('front-lit');
    expect(lightClass(20, 60, true)).toBe('front-lit');
    expect(lightClass(20, 60, null)).toBe('front-lit');
    expect(lightClass(20, 60 + hair, true)).toBe('side-lit');
    expect(lightClass(20, 10, false)).toBe('side-lit');
    expect(lightClass(20, 110, null)).toBe('side-lit');
    expect(lightClass(20, 110 + hair, true)).toBe('back-lit');
    expect(lightClass(20, 180, false)).toBe('back-lit');
  });
});

describe('factors of the score', () => {
  test.each([
    [0, 1],
    [60, 1],
    [85, 0.8],
    [110, 0.6],
    [145, 0.4],
    [180, 0.2],
  ])('[F62] light at an angle of %d degrees', (angle, factor) => {
    expect(lightFactor(20, angle, true)).toBeCloseTo(factor, 12);
    expect(lightFactor(20, angle, null)).toBeCloseTo(factor, 12);
    expect(lightFactor(20, angle, false)).toBeCloseTo(factor / 2, 12);
    expect(lightFactor(54, angle, true)).toBeCloseTo(factor * 0.76, 12);
  });

  test.each([
    [-0.833, 1],
    [45, 1],
    [52.5, 0.8],
    [60, 0.6],
    [89, 0.6],
  ])('[F63] light at a sun altitude of %d degrees', (altitude, factor) => {
    expect(lightFactor(altitude, 30, true)).toBeCloseTo(factor, 12);
    expect(lightCeiling(altitude)).toBeCloseTo(factor, 12);
  });

  test('[F64] civil twilight 0.2 whatever the angle, dark 0', () => {
    expect(lightFactor(-0.833 - hair, 175, false)).toBe(0.2);
    expect(lightFactor(-6, 5, true)).toBe(0.2);
    expect(lightFactor(-6 - hair, 5, true)).toBe(0);
  });

  test.each([
    [0, 0.25],
    [18, 0.55],
    [45, 1],
    [72, 1],
    [100, 1],
    [140, 0.575],
    [180, 0.15],
  ])('[F65] aspect of %d degrees', (aspect, factor) => {
    expect(aspectFactor(aspect)).toBeCloseTo(factor, 12);
  });

  test.each([
    // slant range, sun altitude, elevation
    [500, 40, 0, 1],
    [1250, 40, 0, 0.65],
    [2000, 40, 0, 0.3],
    [9000, 40, 0, 0.3],
    [2000, 15, 0, 0.65],
    [2000, -3, 0, 1],
    [2000, 40, 2, 0.3],
    [2000, 40, 6, 0.65],
    [2000, 40, 10, 1],
    [2000, 40, 30, 1],
    [1250, 15, 6, 1 - 0.7 / 8],
  ])('[F66] haze over %d m, sun at %d, aircraft at %d degrees', (range, altitude, elevation, factor) => {
    expect(hazeFactor(hazeOf(range, elevation), range, altitude)).toBeCloseTo(factor, 12);
    const sine = Math.sin((elevation * Math.PI) / 180);
    expect(hazeFactor(hazeBy(range, sine), range, altitude)).toBeCloseTo(factor, 12);
  });

  test('[S350] by cosine and sine they are what they are by the angle, on either side of every limit', () => {
    const limits = [0, 45, 60, 90, 100, 110, 180];
    const angles = limits.flatMap((limit) => [-1, -1e-5, -1e-9, 0, 1e-9, 1e-5, 1].map((by) => limit + by));
    for (const angle of angles.filter((a) => a >= 0 && a <= 180)) {
      const cosine = Math.cos((angle * Math.PI) / 180);
      // An arc cosine near 0 and 180 degrees is known to 1e-6 degrees.
      expect(angleFactorBy(cosine)).toBeCloseTo(angleFactor(angle), 7);
      expect(aspectFactorBy(cosine)).toBeCloseTo(aspectFactor(angle), 7);
    }
    expect(aspectFactorBy(NaN)).toBe(aspectFactor(null));
    for (const elevation of [-90, -3, 2, 6, 10 - 1e-9, 10, 10 + 1e-9, 60, 90])
      for (const range of [499, 500, 501, 1250, 5000]) {
        const sine = Math.sin((elevation * Math.PI) / 180);
        expect(hazeBy(range, sine)).toBeCloseTo(hazeOf(range, elevation), 7);
      }
  });
});
