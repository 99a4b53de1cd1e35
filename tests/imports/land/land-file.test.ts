import { describe, expect, test } from 'vitest';
import { decodeLand, encodeLand } from '../../../src/imports/land/land-file';
import { loadLand } from '../../../src/imports/land/load';

const ring = [
  [12.34, -5.67],
  [12.5, -5.67],
  [12.5, -5],
  [12.34, -5.67],
] as const;

describe('the file of the world’s land', () => {
  test('[M18] brings back what went in, to a hundredth of a degree', () => {
    const file: unknown = JSON.parse(JSON.stringify(encodeLand([[ring], [ring, [...ring].reverse()]], 'x')));
    expect(decodeLand(file)).toEqual([[ring], [ring, [...ring].reverse()]]);
  });
  test.each([null, 7, {}, { areas: 'x' }])('[M18] %j is none', (value) =>
    expect(decodeLand(value)).toBeNull(),
  );
  test('[M18] that cannot be had is no error', async () => {
    expect(await loadLand('x', () => Promise.reject(new Error('no network')))).toBeNull();
    expect(
      await loadLand('x', () => Promise.resolve({ ok: false, json: () => Promise.resolve({}) })),
    ).toBeNull();
  });
});
