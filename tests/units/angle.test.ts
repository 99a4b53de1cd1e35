import { expect, test } from 'vitest';
import { formatDeclination, parseDegrees, sexagesimal } from '../../src/units/angle';

test('declination says east or west, never a sign', () => {
  expect([1.24, -0.35, 0.04, -0.04].map(formatDeclination)).toEqual([
    '1.2° east',
    '0.3° west',
    '0.0°',
    '0.0°',
  ]);
});

test('degrees are read with and without their sign', () => {
  expect([' 3.2 °', '270', '3,5°', '45 deg', '', 'steep'].map(parseDegrees)).toEqual([
    3.2,
    270,
    3.5,
    45,
    null,
    null,
  ]);
});

test('seconds never round up to sixty', () => {
  expect(sexagesimal(-12.99999999, 1)).toEqual({ degrees: 13, minutes: 0, seconds: 0 });
  expect(sexagesimal(51.4775, 1)).toEqual({ degrees: 51, minutes: 28, seconds: 39 });
});
