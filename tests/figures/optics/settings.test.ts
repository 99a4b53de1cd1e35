import { describe, expect, test } from 'vitest';
import { circleOfConfusion, depthOfField } from '../../../src/figures/optics/depth-of-field';
import {
  lensAt,
  reachesTo,
  nothingPinned,
  settingsFor,
  type Pinned,
} from '../../../src/figures/optics/settings';
import { outlookOf } from '../../../src/figures/outlook';
import { inspectPath } from '../../../src/figures/spot/inspect-path';
import { contentsOf, plainKit, plainSubject, spotFeature } from '../../support/contents';
import { destination } from '../../../src/figures/geometry/earth';
import { oneSamplePath } from '../../support/one-sample';

const spot = [8.56, 47.45] as const;
const noon = Date.parse('2026-06-21T08:00:00Z');

/** The plain jet, or what it is changed to, `away` m north of a spot, on a heading. */
function sampleOf(away: number, heading: number, change = {}, speed = 60) {
  const contents = contentsOf([spotFeature('s', spot, { ground: 0, eyeHeight: 1.7 })], {
    subjects: [{ ...plainSubject, ...change }],
    kit: plainKit,
  });
  const [standing] = contents.spots;
  if (!standing) throw new Error('expected a spot');
  const path = oneSamplePath(destination(spot, 0, away), 30, heading, { speed });
  const sample = inspectPath(standing, path, 0, outlookOf(contents, null), noon);
  const lens = contents.kit.lenses[1];
  if (!lens) throw new Error('expected a lens');
  return { sample, setup: { ...contents, lens } };
}
const settings = (from: ReturnType<typeof sampleOf>, pinned: Partial<Pinned> = {}, altitude = 40) =>
  settingsFor(from.sample, altitude, from.setup, { ...nothingPinned, ...pinned });

describe('settings for a sample', () => {
  test('[F303] the starting f-number covers nose to tail and is never below f/7.1 or what the lens opens to', () => {
    for (const heading of [0, 20, 45, 70, 90, 135, 180])
      for (const away of [60, 150, 400, 1500]) {
        const from = sampleOf(away, heading);
        const { aperture, near, far, focalLength } = settings(from);
        const half = 15 * Math.abs(Math.cos(((from.sample.aspect ?? NaN) * Math.PI) / 180));
        expect(near).toBeLessThanOrEqual(from.sample.slantRange - half + 1e-6);
        expect(far ?? Infinity).toBeGreaterThanOrEqual(from.sample.slantRange + half);
        expect(aperture).toBeGreaterThanOrEqual(7.1);
        // No more than needed: a tenth of a stop wider would leave out the nose, unless practice or the lens says more.
        if (aperture > 7.1)
          expect(
            depthOfField(
              focalLength,
              aperture * 0.97,
              from.sample.slantRange,
              circleOfConfusion(from.setup.body),
            ).near,
          ).toBeGreaterThan(from.sample.slantRange - half);
      }
    expect(settings(sampleOf(60, 0), { focalLength: 400 }).apertureFrom).toBe('depth');
    expect(settings(sampleOf(400, 90)).apertureFrom).toBe('practice');
  });

  test('[F304] an extender lengthens the lens and makes it slower', () => {
    const { lens } = sampleOf(400, 90).setup;
    expect(lensAt(lens, 400)).toEqual({ extender: null, widestAperture: 5.6 });
    expect(lensAt(lens, 500)).toEqual({ extender: 1.4, widestAperture: 5.6 * 1.4 });
    expect(lensAt(lens, 560)).toMatchObject({ extender: 1.4 });
    // Beyond what it reaches, and between a prime and its extender, it is never the bare lens.
    expect(lensAt(lens, 700)).toEqual({ extender: 1.4, widestAperture: 5.6 * 1.4 });
    const prime = { ...lens, shortest: 500, longest: 500, extenders: [2, 1.4] };
    expect(lensAt(prime, 600)).toEqual({ extender: 1.4, widestAperture: 5.6 * 1.4 });
    expect(lensAt(prime, 1200)).toEqual({ extender: 2, widestAperture: 5.6 * 2 });
    expect([499, 500, 600, 700, 1000].map((mm) => reachesTo(prime, mm))).toEqual([
      false,
      true,
      false,
      true,
      true,
    ]);
    expect(settings(sampleOf(800, 90), { focalLength: 560 })).toMatchObject({
      aperture: 5.6 * 1.4,
      apertureFrom: 'widest',
      focalLength: 560,
    });
  });

  test('[F305] propeller and rotor: no faster than the arc allows', () => {
    const turning = { propulsion: 'propeller', rpm: 2400, blades: 2 };
    const propeller = settings(sampleOf(200, 90, turning));
    expect(propeller).toMatchObject({ shutterFrom: 'blades' });
    expect(propeller.propellerArc).toBeCloseTo(60, 9);
    expect(propeller.shutter).toBeCloseTo(1 / 240, 9);
    const rotor = settings(sampleOf(200, 90, { propulsion: 'rotor', rpm: 390, blades: 3 }));
    expect(rotor.shutter).toBeCloseTo(45 / (6 * 390), 9);
    // Of unknown speed, or engines off, there is no arc.
    expect(settings(sampleOf(200, 90, { propulsion: 'propeller' })).propellerArc).toBeNull();
    expect(settings(sampleOf(200, 90, turning, 0))).toMatchObject({
      propellerArc: null,
      panRate: 0,
      blurStill: 0,
    });
    // A shutter of one's own is taken at its word.
    expect(settings(sampleOf(200, 90, turning), { shutter: 1 / 500 }).propellerArc).toBeCloseTo(28.8, 9);
  });

  test('[F306] the slowest shutters keep the blur within the pixels that were asked for', () => {
    for (const pixels of [1, 2, 5]) {
      const from = sampleOf(300, 75);
      const { slowest } = settings(from, { sharpWithin: pixels });
      if (!slowest) throw new Error('expected an aircraft of known speed');
      expect(settings(from, { shutter: slowest.still }).blurStill).toBeCloseTo(pixels, 9);
      expect(settings(from, { shutter: slowest.panned }).blurPanned).toBeCloseTo(pixels, 9);
      expect(settings(from, { sharpWithin: pixels }).blurPanned).toBeLessThanOrEqual(pixels + 1e-9);
    }
    // Near and fast: faster than the common 1/200; far and slow: the common start.
    expect(settings(sampleOf(100, 90)).shutterFrom).toBe('blur');
    expect(settings(sampleOf(3000, 90))).toMatchObject({ shutterFrom: 'practice', shutter: 1 / 200 });
  });

  test('[F307] what is pinned stays, the others follow, and three pinned values say how far they are off', () => {
    const from = sampleOf(400, 90);
    const balanced = (s: ReturnType<typeof settings>) =>
      Math.log2(s.aperture ** 2 / s.shutter) - s.ev100 - Math.log2(s.iso / 100);
    expect(balanced(settings(from))).toBeCloseTo(0, 9);
    const byIso = settings(from, { iso: 400 });
    expect(byIso).toMatchObject({ iso: 400, aperture: 7.1, shutterFrom: 'exposure', isoFrom: 'pinned' });
    expect(balanced(byIso)).toBeCloseTo(0, 9);
    const byBoth = settings(from, { iso: 400, shutter: 1 / 2000 });
    expect(byBoth).toMatchObject({ iso: 400, shutter: 1 / 2000, apertureFrom: 'exposure', darkBy: 0 });
    const all = settings(from, { iso: 400, shutter: byIso.shutter / 4, aperture: 7.1 });
    expect(all.darkBy).toBeCloseTo(2, 9);
  });

  test('[F308] a larger circle of confusion is deeper', () => {
    const from = sampleOf(300, 30);
    const pinned = { aperture: 8, focalLength: 300 };
    const [small, large] = [0.01, 0.03].map((circleOfConfusion) =>
      settings(from, { ...pinned, circleOfConfusion }),
    );
    expect(small?.near).toBeGreaterThan(large?.near ?? NaN);
    expect(settings(from, pinned).near).toBeCloseTo(
      settings(from, { ...pinned, circleOfConfusion: Math.hypot(36, 24) / 1500 }).near,
      9,
    );
  });
});
