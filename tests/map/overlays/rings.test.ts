import { describe, expect, test } from 'vitest';
import { groundLine } from '../../../src/figures/geometry/earth';
import {
  quietRings,
  quietRingsOf,
  ringsReach,
  selectedRings,
  selectedRingsOf,
} from '../../../src/map/overlays/rings';
import { metresPerPixel } from '../../../src/map/screen';
import type { Position } from '../../../src/survey/document';
import type { SpotScene } from '../../../src/map/overlays/scene';
import { sceneOf } from '../scene';

const [bank] = sceneOf().spots as [SpotScene];
const at = bank.spot.position;

/** Pixels from the spot to every corner of its rings. */
const radii = (features: ReturnType<typeof selectedRingsOf>, zoom: number) =>
  features
    .filter((f) => f.properties['part'] === 'ring')
    .flatMap((f) => (f.geometry.coordinates as readonly (readonly Position[])[]).flat())
    .map((corner) => groundLine(at, corner).distance / metresPerPixel(at[1], zoom));

describe('light rings', () => {
  test.each([12, 14.25, 17])('have the same size on screen at zoom %s', (zoom) => {
    const all = radii(selectedRingsOf(bank, zoom), zoom);
    const outer = ringsReach(bank.a, selectedRings) - selectedRings.gap;
    // The ellipsoid and the map's sphere differ by up to half a per cent.
    expect(Math.min(...all) / selectedRings.inner).toBeCloseTo(1, 1);
    expect(Math.max(...all) / outer).toBeCloseTo(1, 1);
    expect(Math.max(...all)).toBeLessThan(outer * 1.01);
  });

  test('lie in the bearings of the usable samples', () => {
    const seen = bank.a.paths.flatMap((p) => p.sector.runs.flatMap((r) => r.bearings));
    // The runway passes north of this spot.
    const bearings = selectedRingsOf(bank, 14)
      .filter((f) => f.properties['part'] === 'ring')
      .flatMap((f) => (f.geometry.coordinates as readonly (readonly Position[])[]).flat())
      .map((corner) => groundLine(at, corner).azimuth ?? 0)
      .map((azimuth) => ((azimuth + 180) % 360) - 180);
    const north = seen.map((bearing) => ((bearing + 180) % 360) - 180);
    expect(Math.min(...bearings)).toBeCloseTo(Math.min(...north), 0);
    expect(Math.max(...bearings)).toBeCloseTo(Math.max(...north), 0);
  });

  test('two paths have two rings, each with its letters and its name', () => {
    const texts = selectedRingsOf(bank, 14)
      .filter((f) => f.properties['part'] === 'ring-letter')
      .map((f) => f.properties['text']);
    expect(texts).toEqual(['A', 'B', '10 arrival', 'A', 'B', '10 departure']);
  });

  test('of the others are smaller, of many smaller still, and without letters', () => {
    expect(quietRings(20).band).toBeLessThan(quietRings(5).band);
    expect(quietRings(5).band).toBeLessThan(selectedRings.band);
    const quiet = quietRingsOf(bank.a, bank.b, at, quietRings(5), 14);
    expect(new Set(quiet.map((f) => f.properties['part']))).toEqual(new Set(['ring', 'ring-edge']));
  });
});
