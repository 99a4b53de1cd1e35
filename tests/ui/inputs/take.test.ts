import { describe, expect, test, vi } from 'vitest';
import { readPreferences } from '../../../src/state/preferences.svelte';
import { formatsFor } from '../../../src/ui/formats';
import { takeDegrees, takeLength, takeMegahertz, takeText } from '../../../src/ui/inputs/take';

const metric = () => formatsFor(readPreferences('{"lengths":"m"}'));
const feet = () => formatsFor(readPreferences('{"lengths":"ft"}'));

describe('a length field', () => {
  const bounds = { least: 0, most: 60 };
  test('sets metres, from feet as well, to the millimetre', () => {
    const set = vi.fn();
    expect(takeLength(metric, bounds, set)('50 ft')).toBeNull();
    expect(takeLength(metric, bounds, set)('12.5')).toBeNull();
    expect(takeLength(feet, bounds, set)('100')).toBeNull();
    expect(set.mock.calls).toEqual([[15.24], [12.5], [30.48]]);
  });
  test('refuses what is no length or out of range, and sets nothing', () => {
    const set = vi.fn();
    expect(takeLength(metric, bounds, set)('high')).toMatch(/"high"/);
    expect(takeLength(metric, bounds, set)('61')).toMatch(/61 m is out of range.*0 m to 60 m/);
    expect(takeLength(feet, bounds, set)('300')).toMatch(/300 ft is out of range.*197 ft/);
    expect(set).not.toHaveBeenCalled();
  });
  test('an empty one means not known', () => {
    const set = vi.fn();
    expect(takeLength(metric, bounds, set)('  ')).toBeNull();
    expect(set).toHaveBeenCalledWith(undefined);
  });
});

test('an angle field takes degrees within its bounds', () => {
  const set = vi.fn();
  const take = takeDegrees({ least: 1, most: 12 }, set);
  expect(take('3.5°')).toBeNull();
  expect(take('30')).toMatch(/30 degrees is out of range.*1 to 12 degrees/);
  expect(take('steep')).toMatch(/"steep" is no angle/);
  expect(set.mock.calls).toEqual([[3.5]]);
});

test('a frequency field never sets nothing', () => {
  const set = vi.fn();
  const take = takeMegahertz({ least: 0.1, most: 1000 }, set);
  expect(take('118.505 MHz')).toBeNull();
  expect(take('')).toMatch(/no frequency/);
  expect(take('118505')).toMatch(/out of range/);
  expect(set.mock.calls).toEqual([[118.505]]);
});

test('a text field takes the spaces off, and nothing for nothing', () => {
  const set = vi.fn();
  takeText(set)('  East bank ');
  takeText(set)('   ');
  expect(set.mock.calls).toEqual([['East bank'], [undefined]]);
});
