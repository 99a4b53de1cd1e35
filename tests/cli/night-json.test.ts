import { describe, expect, test } from 'vitest';
import { nightJson } from '../../src/cli/night-json';
import { contentsOf } from '../support/contents';

describe('the night that the command prints', () => {
  test('[F1054] covers the civil day without a gap, the moon with it', () => {
    const site = { reference: [18.1734, 50.9287], timeZone: 'Europe/Warsaw' };
    const { sky, moon } = nightJson(contentsOf([], { site }), '2026-09-21');
    expect(sky.map(({ is }) => is)).toEqual([
      ...['night', 'astronomical', 'nautical', 'civil', 'day'],
      ...['civil', 'nautical', 'astronomical', 'night'],
    ]);
    for (const list of [sky, moon.stretches]) {
      expect(list[0]?.from).toBe('2026-09-20T22:00:00Z');
      expect(list.at(-1)?.to).toBe('2026-09-21T22:00:00Z');
      list.slice(1).forEach((stretch, i) => expect(stretch.from).toBe(list[i]?.to));
    }
    expect(moon.phase).toBe('waxing-gibbous');
  });
});
