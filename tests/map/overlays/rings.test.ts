import { describe, expect, test } from 'vitest';
import { groundLine } from '../../../src/figures/geometry/earth';
import type { PathFromSpot } from '../../../src/figures/types';
import { marksOf } from '../../../src/map/overlays/marks';
import { quietSizes } from '../../../src/map/overlays/quiet-sizes';
import {
  quietRings,
  quietRingsOf,
  ringsOf,
  ringsReach,
  selectedRings,
  selectedRingsOf,
} from '../../../src/map/overlays/rings';
import { metresPerPixel } from '../../../src/map/screen';
import type { Position } from '../../../src/survey/document';
import type { SpotScene } from '../../../src/map/overlays/scene';
import { sceneOf } from '../scene';

const scene = sceneOf();
const [bank, lane] = scene.spots as [SpotScene, SpotScene];
const at = bank.spot.position;

/** Pixels from the spot to every corner of its rings. */
const radii = (features: ReturnType<typeof selectedRingsOf>, zoom: number) =>
  features
    .filter((f) => f.properties['part'] === 'ring')
    .flatMap((f) => (f.geometry.coordinates as readonly (readonly Position[])[]).flat())
    .map((corner) => groundLine(at, corner).distance / metresPerPixel(at[1], zoom));

describe('light rings', () => {
  test.each([12, 14.25, 17])('have the same size on screen at zoom %s', (zoom) => {
    const all = radii(selectedRingsOf(bank, 'every', zoom), zoom);
    const outer = ringsReach(2, selectedRings) - selectedRings.gap;
    // The ellipsoid and the map's sphere differ by up to half a per cent.
    expect(Math.min(...all) / selectedRings.inner).toBeCloseTo(1, 1);
    expect(Math.max(...all) / outer).toBeCloseTo(1, 1);
    expect(Math.max(...all)).toBeLessThan(outer * 1.01);
  });

  test('lie in the bearings of the usable samples', () => {
    const seen = bank.a.paths.flatMap((p) => p.sector.runs.flatMap((r) => r.bearings));
    // The runway passes north of this spot.
    const bearings = selectedRingsOf(bank, 'every', 14)
      .filter((f) => f.properties['part'] === 'ring')
      .flatMap((f) => (f.geometry.coordinates as readonly (readonly Position[])[]).flat())
      .map((corner) => groundLine(at, corner).azimuth ?? 0)
      .map((azimuth) => ((azimuth + 180) % 360) - 180);
    const north = seen.map((bearing) => ((bearing + 180) % 360) - 180);
    expect(Math.min(...bearings)).toBeCloseTo(Math.min(...north), 0);
    expect(Math.max(...bearings)).toBeCloseTo(Math.max(...north), 0);
  });

  test('two paths have two rings, each with its letters and its name', () => {
    const texts = selectedRingsOf(bank, 'every', 14)
      .filter((f) => f.properties['part'] === 'ring-letter')
      .map((f) => f.properties['text']);
    expect(texts).toEqual(['A', 'B', '10 arrival', 'A', 'B', '10 departure']);
  });

  test('of the others are smaller, and without letters', () => {
    const [large, fine] = quietRings;
    expect(fine.band).toBeLessThan(large.band);
    expect(large.band).toBeLessThan(selectedRings.band);
    const quiet = quietRingsOf(bank, null, large, 14);
    expect(new Set(quiet.map((f) => f.properties['part']))).toEqual(new Set(['ring', 'ring-edge']));
  });
});

describe('which rings are drawn', () => {
  const worth = (path: PathFromSpot, total: number, pass = true): PathFromSpot => {
    const best = { ...path.best, score: { ...path.best.score, total } };
    return { ...path, best, pass: pass ? best : null };
  };
  const [one, two] = bank.a.paths as [PathFromSpot, PathFromSpot];
  const seen = (...paths: PathFromSpot[]) => ({ ...bank.a, paths });
  const unseen = { ...one, sector: { runs: [] } };

  test('[M303] one pair a spot: of the path to wait at, which is the one that the card leads with', () => {
    expect(ringsOf(seen(worth(one, 0.5), worth(two, 0.8)), null)).toEqual([1]);
    expect(ringsOf(seen(worth(one, 0.8), worth(two, 0.5)), null)).toEqual([0]);
    const letters = selectedRingsOf(bank, null, 14).filter((f) => f.properties['part'] === 'ring-letter');
    expect(letters.slice(0, 2).map((f) => f.properties['text'])).toEqual(['A', 'B']);
    expect(letters).toHaveLength(3);
  });

  test('[M304] a spot without a pass shows the path of its best picture; one that reaches nothing shows none', () => {
    expect(ringsOf(seen(worth(one, 0.3, false), worth(two, 0.5, false)), null)).toEqual([1]);
    expect(ringsOf(seen(unseen, { ...two, sector: { runs: [] } }), null)).toEqual([]);
    // What nobody can photograph leads nowhere, however well it would score.
    expect(ringsOf(seen({ ...worth(unseen, 0.9) }, worth(two, 0.2)), null)).toEqual([1]);
  });

  test('[M305] the path that is pointed at, at each spot that reaches it; or every path that is reached', () => {
    expect(ringsOf(seen(one, two), { path: one.ref.path })).toEqual([0]);
    expect(ringsOf(seen(unseen, two), { path: one.ref.path })).toEqual([]);
    expect(ringsOf(seen(one, two), 'every')).toEqual([0, 1]);
    expect(ringsOf(seen(unseen, two), 'every')).toEqual([1]);
  });

  test('[M306] A lies inside B in every ring, at every zoom', () => {
    for (const zoom of [9, 12, 14.25, 17, 20])
      for (const choice of ['every', null] as const) {
        const letters = selectedRingsOf(bank, choice, zoom)
          .filter((f) => f.properties['part'] === 'ring-letter')
          .map((f) => ({
            text: f.properties['text'],
            away: groundLine(at, f.geometry.coordinates as Position).distance,
          }));
        for (let i = 0; i < letters.length; i += 3) {
          expect([letters[i]?.text, letters[i + 1]?.text]).toEqual(['A', 'B']);
          expect(letters[i]?.away).toBeLessThan(letters[i + 1]?.away ?? 0);
        }
      }
  });

  test('[M307] where spots stand close on screen their rings are finer, then left out; the selected one keeps its own', () => {
    const crowd = (metres: number, zoom: number) => {
      const shifted = (k: number): SpotScene => ({
        ...bank,
        spot: { ...bank.spot, position: [at[0] + (k * metres) / 71_700, at[1]] },
      });
      return quietSizes([1, 2, 3].map(shifted), null, null, zoom);
    };
    const [large, fine] = quietRings;
    const pixel = metresPerPixel(at[1], 14);
    expect(crowd(80 * pixel, 14)).toEqual([large, large, large]);
    expect(crowd(35 * pixel, 14)).toEqual([fine, fine, fine]);
    expect(crowd(12 * pixel, 14)).toEqual([null, null, null]);
    // Nearer in, the same spots have room again.
    expect(crowd(12 * pixel, 17)).toEqual([large, large, large]);
    // A spot beside the selected one yields to it.
    const beside = {
      ...lane,
      spot: { ...lane.spot, position: [at[0] + (50 * pixel) / 71_700, at[1]] as const },
    };
    expect(quietSizes([beside], bank, null, 14)).not.toEqual([large]);
    expect(quietSizes([beside], null, null, 14)).toEqual([large]);
  });

  test('[M308] marks of the best points name their path, only of paths whose rings are drawn, and none that is not worth it', () => {
    const labels = (a = bank.a, b = bank.b, shown = [0, 1]) =>
      marksOf(scene.paths, a, b, shown, 16).map((f) => String(f.properties['label']));
    for (const label of labels())
      expect(label).toMatch(/^(best A|best B|best A, B|closest), 10 (arrival|departure)$/);
    expect(labels(bank.a, bank.b, [1]).every((label) => label.endsWith('10 departure'))).toBe(true);
    const poor = seen(worth(one, 0.39), worth(two, 0.39));
    expect(labels(poor, poor).every((label) => label.startsWith('closest'))).toBe(true);
    const fair = seen(worth(one, 0.41), worth(two, 0.39));
    expect(labels(fair, fair).filter((label) => label.startsWith('best'))).toEqual(['best A, B, 10 arrival']);
  });

  test('[M309] the mark of what is waited for is that of the headline: the pass, not a better picture nose-on', () => {
    const far = {
      ...one.closest,
      station: one.closest.station + 500,
      score: { ...one.best.score, total: 0.95 },
    };
    const pass = { ...one.closest, score: { ...one.best.score, total: 0.6 } };
    const both = seen({ ...one, best: far, pass }, two);
    const [mark] = marksOf(scene.paths, both, both, [0], 16);
    expect(mark?.properties['label']).toBe('best A, B, 10 arrival');
    const closest = marksOf(scene.paths, both, both, [0], 16).find(
      ({ properties }) => properties['part'] === 'closest',
    );
    expect(mark?.geometry).toEqual(closest?.geometry);
  });
});
