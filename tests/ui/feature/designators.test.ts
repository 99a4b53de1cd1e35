import { describe, expect, test } from 'vitest';
import { readRunwayProperties } from '../../../src/survey/schema/runway';
import { betterDesignator, nameAfterEnds } from '../../../src/ui/feature/designators';

describe('the designator to offer', () => {
  test.each([
    ['08', '09', '09'],
    ['08L', '09', '09L'],
    ['', '27', '27'],
    ['9', '09', null],
    ['09R', '09', null],
    ['N', '36', null],
    ['H1', '04', null],
  ])('"%s" where %s follows from the bearing: %s', (designator, suggested, better) => {
    expect(betterDesignator(designator, suggested)).toBe(better);
  });
});

describe('a runway named after its ends', () => {
  const runway = (name: string) => ({
    id: 'r',
    line: [
      [8, 47],
      [8.02, 47.01],
    ] as const,
    ...readRunwayProperties({ name, ends: [{ designator: '07' }, { designator: '25' }] }, () => undefined),
  });
  test('is renamed with them', () => {
    expect(nameAfterEnds(runway('07/25'), 1, '26')).toBe('07/26');
  });
  test('keeps a name of its own, or none', () => {
    expect(nameAfterEnds(runway('Main runway'), 0, '08')).toBeNull();
    expect(nameAfterEnds(runway(''), 0, '08')).toBeNull();
  });
});
