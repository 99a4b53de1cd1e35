import { describe, expect, test } from 'vitest';
import { labelOf } from '../../../src/map/overlays/label';
import { hostileNames } from '../../support/hostile';

describe('a name on the map', () => {
  test('[X18] stays as it is while there is room, else is cut, sooner where its line cannot break', () => {
    expect(labelOf('North car park, upper deck')).toBe('North car park, upper deck');
    expect(labelOf('word '.repeat(400))).toBe(`${'word '.repeat(10).slice(0, 47)}…`);
    expect(labelOf('W'.repeat(5000))).toBe(`${'W'.repeat(23)}…`);
  });

  test('[X18] holds no mark that turns the writing and no line of its own, whatever the file holds', () => {
    expect(labelOf('\u202Efdp.tset\u202C')).toBe('fdp.tset');
    for (const name of hostileNames) {
      expect([...labelOf(name)].length).toBeLessThanOrEqual(48);
      expect(labelOf(name)).not.toMatch(/[\u202a-\u202e\u2066-\u2069\n]/);
    }
  });
});
