import { describe, expect, test } from 'vitest';
import type { SpotFigures } from '../../../src/figures/types';
import { quietRings } from '../../../src/map/overlays/rings';
import { spotFeature } from '../../../src/map/overlays/spots';
import type { SpotScene } from '../../../src/map/overlays/scene';
import { sceneOf } from '../scene';

const [bank, lane] = sceneOf().spots as [SpotScene, SpotScene];
const [size] = quietRings;
const rings = { paths: [0, 1], size };

describe('the mark of a standing spot', () => {
  test('has its name on the side away from the rings: below south of the runway, above north of it', () => {
    expect(spotFeature(bank.spot, bank.a, 'spot', rings, false).properties['anchor']).toBe('top');
    expect(spotFeature(lane.spot, lane.a, 'spot', rings, false).properties['anchor']).toBe('bottom');
  });

  test('with rings all round the name goes outside them', () => {
    const bearings = Array.from({ length: 72 }, (_, i) => i * 5);
    const [path] = bank.a.paths;
    const run = { ...path?.sector.runs[0], bearings };
    const all = { ...bank.a, paths: [{ ...path, sector: { runs: [run] } }] } as unknown as SpotFigures;
    const near = spotFeature(bank.spot, bank.a, 'spot', rings, false).properties['offset'] as number;
    const far = spotFeature(bank.spot, all, 'spot', { paths: [0], size }, false).properties[
      'offset'
    ] as number;
    expect(far * 12).toBeGreaterThan(size.inner + 2 * size.band);
    expect(near).toBeLessThan(far);
  });

  test('where rings have no room, or none is drawn there, the name is held close', () => {
    const alone = spotFeature(bank.spot, bank.a, 'spot', { paths: [0], size: null }, false);
    expect(alone.properties['offset']).toBeCloseTo(13 / 12, 6);
  });

  test('says when nobody may stand there', () => {
    expect(spotFeature(bank.spot, bank.a, 'spot', rings, true).properties['forbidden']).toBe(true);
    expect(spotFeature(bank.spot, bank.a, 'spot', rings, false).properties['forbidden']).toBe(false);
  });
});
