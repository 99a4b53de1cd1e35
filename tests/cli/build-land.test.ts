import { readFile } from 'node:fs/promises';
import { gzipSync } from 'node:zlib';
import { beforeAll, describe, expect, test } from 'vitest';
import { buildLand, landPath } from '../../src/cli/build-land';
import { simplifyRing } from '../../src/cli/land/simplify';
import { decodeLand, type LandArea } from '../../src/imports/land/land-file';
import type { Position } from '../../src/survey/document';

/** Crossings of a ray to the east with the rings: odd inside, lakes taken out. */
const holds = (area: LandArea, [lng, lat]: Position) =>
  area.flatMap((ring) =>
    ring.filter(([x, y], i) => {
      const [x0, y0] = ring[i - 1] ?? [x, y];
      return y0 > lat !== y > lat && lng < x0 + ((x - x0) * (lat - y0)) / (y - y0);
    }),
  ).length %
    2 ===
  1;

describe('the world’s land', () => {
  let areas: readonly LandArea[];
  let text: string;
  beforeAll(async () => {
    await buildLand();
    text = await readFile(landPath, 'utf8');
    areas = decodeLand(JSON.parse(text)) ?? [];
  });

  test.each([
    ['Warsaw', [21.0, 52.23], true],
    ['the Sahara', [10, 23], true],
    ['the east of Siberia, over the antimeridian', [-175, 66.3], true],
    ['and before it', [175, 66.3], true],
    ['the South Pole', [0, -89], true],
    ['New Zealand', [175.5, -38.5], true],
    ['the middle of the Atlantic', [-40, 30], false],
    ['the middle of the Pacific, on the antimeridian', [180, 10], false],
    ['the North Pole', [0, 89], false],
    ['the Caspian Sea', [51, 41], false],
  ] as const)('[M19] %s', (_, place, isLand) => {
    expect(areas.some((area) => holds(area, place))).toBe(isLand);
  });

  test('[M19] is small enough to be fetched when somebody looks that far, and stays on the map', () => {
    expect(gzipSync(text, { level: 9 }).length).toBeLessThan(80_000);
    for (const [lng, lat] of areas.flat(2)) {
      expect(Math.abs(lng)).toBeLessThanOrEqual(180);
      expect(Math.abs(lat)).toBeLessThanOrEqual(90);
    }
  });

  test('[M19] is not written again while it is up to date', async () => {
    expect(await buildLand()).toEqual({ built: false });
  });

  test('[M20] a ring loses what nobody sees, and an islet is gone', () => {
    const square: Position[] = [
      [0, 0],
      [5, 0.001],
      [10, 0],
      [10, 10],
      [0, 10],
      [0, 0],
    ];
    expect(simplifyRing(square, 0.02)).toEqual(square.filter((_, i) => i !== 1));
    expect(
      simplifyRing(
        square.map(([x, y]): Position => [x / 1000, y / 1000]),
        0.02,
      ),
    ).toBeNull();
    expect(simplifyRing([], 0.02)).toBeNull();
  });
});
