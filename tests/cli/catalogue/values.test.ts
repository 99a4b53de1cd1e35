import { expect, it } from 'vitest';
import { degrees, text, wholeNumber } from '../../../src/cli/catalogue/values';

it.each([
  // 32-bit numbers as the data hold them, and what was published.
  [Math.fround(-70.0275), -70.0275],
  [Math.fround(12.5044), 12.5044],
  [Math.fround(139.7811), 139.7811],
  [-16.5, -16.5],
  // Not through 32 bits: to the millionth.
  [-0.48677251, -0.486773],
  [40.070985, 40.070985],
])('reads %d degrees as %d', (stored, published) => {
  expect(degrees(stored)).toBe(published);
});

it('reads text on one line, and nothing as empty', () => {
  expect(text('  Lower \n Farthing  ')).toBe('Lower Farthing');
  expect(text(null)).toBe('');
  expect(wholeNumber(null)).toBe(0);
});
