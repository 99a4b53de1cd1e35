import { describe, expect, test } from 'vitest';
import { destination } from '../../../src/figures/geometry/earth';
import { nothingPinned, type Pinned } from '../../../src/figures/optics/settings';
import { settingsCard } from '../../../src/figures/optics/settings-card';
import {
  apertures,
  isos,
  nearest,
  notAbove,
  notBelow,
  shutters,
} from '../../../src/figures/optics/third-stops';
import { inspectPath } from '../../../src/figures/spot/inspect-path';
import { outlookOf } from '../../../src/figures/outlook';
import { contentsOf, plainKit, plainSubject, spotFeature } from '../../support/contents';
import { oneSamplePath } from '../../support/one-sample';

const spot = [8.56, 47.45] as const;
const noon = Date.parse('2026-06-21T08:00:00Z');
const turning = { propulsion: 'propeller', rpm: 2400, blades: 2 };

function card(away: number, altitude: number, pinned: Partial<Pinned> = {}, change = {}, speed = 60) {
  const contents = contentsOf([spotFeature('s', spot, { ground: 0, eyeHeight: 1.7 })], {
    subjects: [{ ...plainSubject, ...change }],
    kit: plainKit,
  });
  const [standing] = contents.spots;
  const lens = contents.kit.lenses[1];
  if (!standing || !lens) throw new Error('expected a spot and a lens');
  const path = oneSamplePath(destination(spot, 0, away), 30, 90, { speed });
  const sample = inspectPath(standing, path, 0, outlookOf(contents, null), noon);
  return settingsCard(sample, altitude, { ...contents, lens }, { ...nothingPinned, ...pinned });
}
const kinds = (...of: Parameters<typeof card>) => card(...of).warnings.map((w) => w.kind);

describe('settings as a camera can have them', () => {
  test('[F320] thirds of a stop: the nearest, and never on the wrong side', () => {
    expect([nearest(apertures, 7.4), nearest(isos, 31), nearest(shutters, 1 / 237)]).toEqual([
      7.1,
      100,
      1 / 250,
    ]);
    expect([notBelow(apertures, 7.6), notBelow(shutters, 1 / 240)]).toEqual([8, 1 / 250]);
    expect(notBelow(shutters, 1 / 220)).toBe(1 / 200);
    expect(notAbove(shutters, 1 / 230)).toBe(1 / 250);
    expect(notBelow(apertures, 90)).toBe(32);
  });

  test('[F321] every value is one that cameras offer, and the exposure comes out to a sixth of a stop', () => {
    for (const altitude of [-3, 2, 10, 40])
      for (const change of [{}, turning])
        for (const away of [120, 400, 1500]) {
          const { aperture, shutter, iso, exact, warnings } = card(away, altitude, {}, change);
          expect(apertures).toContain(aperture);
          expect(shutters).toContain(shutter);
          expect(isos).toContain(iso);
          const off = Math.log2(aperture ** 2 / shutter) - exact.ev100 - Math.log2(iso / 100);
          if (!warnings.some((w) => w.kind === 'off' || w.kind === 'too-bright'))
            expect(Math.abs(off)).toBeLessThan(0.51);
        }
  });

  test('[F322] in bright sun ISO stays at 100: the shutter gets faster, before blades the lens is closed', () => {
    const jet = card(1500, 40);
    expect(jet).toMatchObject({ iso: 100, lowestIso: true, aperture: 7.1 });
    expect(jet.shutter).toBeLessThan(1 / 250);
    const propeller = card(400, 40, {}, turning);
    expect(propeller).toMatchObject({ iso: 100, shutter: 1 / 250 });
    expect(propeller.aperture).toBeGreaterThan(7.1);
    expect(propeller.shown.propellerArc).toBeGreaterThan(55);
  });

  test('[F323] says when the light no longer allows it, and what speaks against pinned values', () => {
    expect(kinds(400, 40)).toEqual([]);
    expect(kinds(400, -6)).toContain('too-dark');
    const dark = card(400, -3, { shutter: 1 / 1000, aperture: 7.1 }).warnings.find(
      (w) => w.kind === 'too-dark',
    );
    expect(dark).toMatchObject({ wideOpen: 5.6 });
    expect(kinds(400, 20, { aperture: 4 })).toContain('beyond-lens');
    expect(kinds(400, 20, { aperture: 22 })).toContain('soft');
    expect(kinds(120, 20, { shutter: 1 / 30 })).toContain('blurred');
    expect(kinds(400, 20, { shutter: 1 / 2000 }, turning)).toContain('frozen');
    expect(kinds(400, 20, { shutter: 1 / 8 }, {}, 0)).toEqual(expect.arrayContaining(['tripod']));
    expect(kinds(400, 20, { shutter: 1 / 1000, aperture: 8, iso: 100 })).toContain('off');
  });

  test('[F324] pinned values are shown as they were pinned', () => {
    expect(card(400, 20, { aperture: 9, iso: 400 })).toMatchObject({ aperture: 9, iso: 400 });
    expect(card(400, 20, { shutter: 1 / 640 })).toMatchObject({ shutter: 1 / 640 });
  });
});
