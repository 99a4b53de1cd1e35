import { expect, it } from 'vitest';
import { compassWords } from '../../src/units/compass';

it('names the nearest of sixteen points', () => {
  expect(compassWords(0)).toBe('north');
  expect(compassWords(247)).toBe('west-south-west');
  expect(compassWords(68)).toBe('east-north-east');
  expect(compassWords(158)).toBe('south-south-east');
});

it('turns the corner at north', () => {
  expect(compassWords(348)).toBe('north-north-west');
  expect(compassWords(349)).toBe('north');
  expect(compassWords(-30)).toBe('north-north-west');
});
