import { describe, expect, test } from 'vitest';
import type { SpotFigures } from '../../../src/figures/types';
import type { OverlayFeature } from '../../../src/map/overlays/features';
import { quietRings } from '../../../src/map/overlays/rings';
import { spotFeature } from '../../../src/map/overlays/spots';
import type { SpotScene } from '../../../src/map/overlays/scene';
import { sceneOf } from '../scene';

const [bank, lane] = sceneOf().spots as [SpotScene, SpotScene];
const [size] = quietRings;
const rings = { paths: [0, 1], size };

const middle = [0, 0] as const;
type Places = readonly [string, readonly [number, number], ...unknown[]];
const placesOf = (feature: OverlayFeature) => feature.properties['places'] as unknown as Places;
const anchorsOf = (feature: OverlayFeature) => placesOf(feature).filter((x) => typeof x === 'string');
/** px from the mark to its name. */
const distance = (feature: OverlayFeature) => 12 * Math.hypot(...placesOf(feature)[1]);

describe('the mark of a standing spot', () => {
  test('has its name on the side away from the rings: below south of the runway, above north of it', () => {
    expect(placesOf(spotFeature(bank.spot, bank.a, 'spot', rings, false, middle))[0]).toBe('top');
    expect(placesOf(spotFeature(lane.spot, lane.a, 'spot', rings, false, middle))[0]).toBe('bottom');
  });

  test('with rings all round the name goes outside them', () => {
    const bearings = Array.from({ length: 72 }, (_, i) => i * 5);
    const [path] = bank.a.paths;
    const run = { ...path?.sector.runs[0], bearings };
    const all = { ...bank.a, paths: [{ ...path, sector: { runs: [run] } }] } as unknown as SpotFigures;
    const near = spotFeature(bank.spot, bank.a, 'spot', rings, false, middle);
    const far = spotFeature(bank.spot, all, 'spot', { paths: [0], size }, false, middle);
    expect(distance(far)).toBeGreaterThan(size.inner + 2 * size.band);
    expect(distance(near)).toBeLessThan(distance(far));
  });

  test('where rings have no room, or none is drawn there, the name is held close', () => {
    const alone = spotFeature(bank.spot, bank.a, 'spot', { paths: [0], size: null }, false, middle);
    expect(distance(alone)).toBeCloseTo(13, 6);
  });

  test('[B1060] without rings it stands over or under its mark, or towards the field: never off a phone’s map', () => {
    const [lng, lat] = bank.spot.position;
    const anchors = (west: number, south: number) =>
      anchorsOf(
        spotFeature(bank.spot, bank.a, 'spot', { paths: [0], size: null }, false, [lng - west, lat - south]),
      );
    expect(anchors(0.01, 0.01)).toEqual(['bottom', 'top', 'right']);
    expect(anchors(-0.01, -0.01)).toEqual(['top', 'bottom', 'left']);
  });

  test('says when nobody may stand there', () => {
    const closed = (yes: boolean) =>
      spotFeature(bank.spot, bank.a, 'spot', rings, yes, middle).properties['forbidden'];
    expect(closed(true)).toBe(true);
    expect(closed(false)).toBe(false);
  });
});
