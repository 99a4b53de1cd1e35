import { expect, test } from 'vitest';
import { flownJson } from '../../src/cli/flown-json';
import type { ElevationGrid } from '../../src/figures/sight/terrain';
import { contentsOf, runwayFeature } from '../support/contents';
import { arrivalOf24, madeFlight, madeRunway } from '../support/made-flights';

/** Level ground at the height of the made runway's middle. */
const ground: ElevationGrid = {
  ...{ columns: 200, rows: 200, west: 18.05, north: 51.02, stepLng: 0.001, stepLat: 0.001 },
  heights: new Float32Array(40_000).fill(183),
};

test('[L36] flights are told above the terrain where the runway states no height, and not above the sea', () => {
  const flights = Array.from({ length: 6 }, (_, i) =>
    madeFlight(
      `a${i}`,
      arrivalOf24({ glide: 3.2, crossing: 21, speed: 66, offset: 4, rolling: 5, noise: 0, seed: i }),
    ),
  );
  const { a, b } = madeRunway;
  const bare = runwayFeature('r1', a, b, [{ designator: '06' }, { designator: '24', displaced: 300 }]);
  const contents = contentsOf([bare, ...flights]);
  const at2000 = (terrain: ElevationGrid | null) =>
    flownJson(contents, terrain).flown[0]?.stations.find(({ station }) => station === 2000)?.height[1];
  // 21 m at the threshold and 2,000 m of 3.2 degrees before it; the made runway slopes by 3 m either way.
  expect(at2000(ground)).toBeGreaterThan(125);
  expect(at2000(ground)).toBeLessThan(145);
  expect(at2000(null)).not.toBeCloseTo(at2000(ground) ?? NaN, -1);
});
