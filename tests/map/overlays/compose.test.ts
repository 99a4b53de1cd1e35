import { describe, expect, test } from 'vitest';
import { sceneDrawer } from '../../../src/map/overlays/compose';
import type { Overlay } from '../../../src/map/overlays/features';
import { reshapeFeature } from '../../../src/survey/edits/reshape-feature';
import { setMoments } from '../../../src/survey/edits/set-members';
import { field } from '../field';
import { sceneOf } from '../scene';

const parts = ({ features }: Overlay) => [...new Set(features.map((f) => f.properties['part']))].sort();

describe('overlays of one scene after another', () => {
  test('a spot that is dragged changes what hangs on it, and nothing else', () => {
    const draw = sceneDrawer();
    const before = draw(sceneOf(field, 'bank'));
    const moved = reshapeFeature(field, 'bank', { type: 'Point', coordinates: [7.0015, 49.9958] });
    const after = draw(sceneOf(moved, 'bank'));
    expect(after.ground).toBe(before.ground);
    expect(after.lit).toBe(before.lit);
    expect(after.spots).toBe(before.spots);
    expect(after.live).not.toBe(before.live);
    expect(after.paths).not.toBe(before.paths);
  });

  test('the same scene is the same objects; another time of day leaves the ground', () => {
    const draw = sceneDrawer();
    const scene = sceneOf(field, 'bank');
    const before = draw(scene);
    const again = draw({ ...scene });
    for (const key of ['ground', 'lit', 'paths', 'spots', 'live'] as const)
      expect(again[key]).toBe(before[key]);
    const after = draw(sceneOf(setMoments(field, { a: '06:10' }), 'bank'));
    expect(after.ground).toBe(before.ground);
    expect(after.lit).not.toBe(before.lit);
  });

  test('[F767] a spot that is closed on the day is crossed out, selected or not, and again open on another', () => {
    const draw = sceneDrawer();
    const crossed = (closed: readonly string[]) => {
      const { spots, live } = draw({ ...sceneOf(field, 'bank'), closedSpots: new Set(closed) });
      return [...spots.features, ...live.features]
        .filter((f) => f.properties['forbidden'] === true)
        .map((f) => f.properties['id']);
    };
    expect(crossed([])).toEqual([]);
    expect(crossed(['bank', 'lane']).sort()).toEqual(['bank', 'lane']);
    expect(crossed(['lane'])).toEqual(['lane']);
    expect(crossed([])).toEqual([]);
  });

  test('the selected spot is drawn with the live things, the others with the quiet ones', () => {
    const { spots, live } = sceneDrawer()(sceneOf(field, 'bank'));
    const ids = (o: Overlay, part: string) =>
      o.features.filter((f) => f.properties['part'] === part).map((f) => f.properties['id']);
    expect(ids(spots, 'spot')).toEqual(['lane']);
    expect(ids(live, 'selected-spot')).toEqual(['bank']);
    expect(parts(live)).toEqual(['closest', 'ring', 'ring-edge', 'ring-letter', 'selected-spot', 'tick']);
  });

  test('[S198] a place that is looked at in the list has the rings that a spot there would have, and no mark of its own', () => {
    const scene = sceneOf(field, 'bank');
    const place = scene.spots.find(({ spot }) => spot.id === 'bank');
    if (!place) throw new Error('expected the bank');
    const draw = sceneDrawer();
    const { live, spots } = draw({ ...sceneOf(field, null), visited: place });
    expect(parts(live)).toEqual(['ring', 'ring-edge', 'ring-letter']);
    const rings = (drawn: Overlay) =>
      drawn.features.filter((f) => String(f.properties['part']).startsWith('ring'));
    expect(rings(live)).toEqual(rings(draw(scene).live));
    expect(draw(sceneOf(field, null)).spots.features).toEqual(spots.features);
  });

  test('a survey without anything draws nothing', () => {
    const empty = sceneOf({ ...field, features: [] });
    for (const drawn of Object.values(sceneDrawer()(empty))) expect((drawn as Overlay).features).toEqual([]);
  });
});
