import { expect, test } from 'vitest';
import type { MonthFrom, PastTold } from '../../../src/figures/flown/past-use';
import { monthsWords, pastWords } from '../../../src/ui/words/past-use-words';

const told = (months: (month: number) => MonthFrom, more: Partial<PastTold> = {}): PastTold => ({
  months: Array.from({ length: 12 }, (_, m) => months(m)),
  flights: 42,
  closed: 0,
  chosen: null,
  winds: true,
  needed: { flights: 20, days: 10 },
  ...more,
});

test('[F739] which of flights and winds counts is said, and why', () => {
  expect(pastWords(told(() => 'winds', { flights: 0 }))).toEqual([]);
  expect(pastWords(told(() => 'winds'))).toEqual([
    'Ends by past winds: 42 recorded flights do not speak for a month yet, which takes 20 of them on 10 different days of it.',
  ]);
  expect(pastWords(told((m) => (m > 4 && m < 8 ? 'flights' : 'winds'), { flights: 3000 }))).toEqual([
    'Ends in Jun to Aug by recorded flights, what was really used; in the other months by past winds, what was asked for.',
  ]);
  expect(pastWords(told((m) => (m === 5 ? 'flights' : null), { winds: false }))).toEqual([
    'Ends by 42 recorded flights: what was really used. So few say little yet.',
  ]);
  expect(pastWords(told(() => 'winds', { chosen: 'winds', closed: 60 }))).toEqual([
    'Ends by past winds, as chosen: 42 recorded flights do not count.',
    '60 flights to ends that are closed now do not count.',
  ]);
});

test('[F739] months in runs', () => {
  expect(monthsWords([0, 1, 5, 9, 10, 11])).toBe('Jan to Feb, Jun, Oct to Dec');
});
