import { describe, expect, test } from 'vitest';
import { healthWords, readMaxZoom } from '../../../src/ui/base-maps/words';

const ground = { kind: 'style', name: 'the quiet map', address: '', credit: [] } as const;
const report = (health: 'waiting' | 'shown' | 'unreachable' | 'empty', reason: string | null = null) =>
  healthWords(ground, { health, reason, credit: [] });

describe('one quiet line about the base map', () => {
  test('[M17] is said only when there is something to say', () => {
    expect([report('waiting'), report('shown')]).toEqual([null, null]);
    expect(healthWords({ kind: 'plain' }, { health: 'unreachable', reason: null, credit: [] })).toBeNull();
    expect(report('unreachable')).toBe(
      'The map tiles of the quiet map cannot be reached; the survey goes on on the plain plan.',
    );
    expect(report('unreachable', 'it is a song')).toBe(
      'The quiet map cannot be shown: it is a song. The survey goes on on the plain plan.',
    );
    expect(report('empty')).toMatch(/no map tiles of the quiet map here/);
  });
  test('[M17] zooms are whole numbers', () => {
    expect(['19', ' 0 ', '24', '25', '-1', '7.5', '', 'x'].map(readMaxZoom)).toEqual([
      19,
      0,
      24,
      null,
      null,
      null,
      null,
      null,
    ]);
  });
});
