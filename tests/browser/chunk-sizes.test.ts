import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { builtSizes, growth, recordFile, sizeAtStart, type ChunkSizes } from '../budgets/chunk-sizes';

describe('the size of the program', () => {
  it('[B150] no chunk has grown by more than 1 kB, compressed, since it was last looked at', () => {
    const recorded = JSON.parse(readFileSync(recordFile, 'utf8')) as ChunkSizes;
    const grown = growth(recorded, builtSizes());
    // Worth it? Then record it and say so in the commit.
    expect(grown, 'If that is worth it, record the sizes with: npm run -s sizes').toEqual([]);
  });

  // The design's budget. Magnetic north and the checks of a survey come after the page is there.
  it('[B151] 150 kB of script at most, compressed, are loaded before the map library', () => {
    expect(sizeAtStart()).toBeGreaterThan(10_000);
    expect(sizeAtStart()).toBeLessThanOrEqual(150_000);
  });

  it('[B152] names what has grown, and what is new, and nothing else', () => {
    const recorded = { index: 100_000, map: 5_000, gone: 9_000 };
    const built = { index: 101_000, map: 6_001, panel: 1_001, small: 1_000 };
    expect(growth(recorded, built)).toEqual([
      'map: 5000 bytes recorded, 6001 built',
      'panel: 0 bytes recorded, 1001 built',
    ]);
  });
});
