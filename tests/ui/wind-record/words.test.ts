import { expect, test } from 'vitest';
import { yearWords } from '../../../src/ui/wind-record/words';

test('[F251] a year of hours: grouped digits, and how many months it is of where some have no data', () => {
  const months = (hours: number, none: number) => [
    ...Array<number>(12 - none).fill(hours),
    ...Array<null>(none).fill(null),
  ];
  expect(yearWords(months(181.75, 0))).toBe('2,181');
  expect(yearWords(months(100.4, 1))).toBe('1,104 in 11 months');
  expect(yearWords(months(30, 11))).toBe('30 in 1 month');
  expect(yearWords(months(0, 12))).toBe('out of reach');
});
