import { describe, expect, test } from 'vitest';
import {
  configurationOf,
  endsInWords,
  oppositeEnds,
  shortEndWords,
  toggledEnd,
} from '../../../src/ui/contents/ends';

const list = [
  { runway: 'main', end: 0 },
  { runway: 'cross', end: 1 },
] as const;

test('an end that is not in use comes last, one that is goes', () => {
  expect(toggledEnd(list, { runway: 'main', end: 1 })).toEqual([...list, { runway: 'main', end: 1 }]);
  expect(toggledEnd(list, { runway: 'main', end: 0 })).toEqual([{ runway: 'cross', end: 1 }]);
});

test('the wind turns: each runway is used from its other end', () => {
  expect(oppositeEnds(list)).toEqual([
    { runway: 'main', end: 1 },
    { runway: 'cross', end: 0 },
  ]);
});

test('the ends in use in words', () => {
  const ends = [
    { ref: { runway: 'main', end: 0 }, designator: '07' },
    { ref: { runway: 'main', end: 1 }, designator: '25' },
    { ref: { runway: 'cross', end: 1 }, designator: '32' },
  ] as const;
  const main = { runway: 'main', end: 1 } as const;
  const cross = { runway: 'cross', end: 1 } as const;
  expect(endsInWords({ arrivals: [main], departures: [main] }, ends)).toBe('25 for arrivals and departures');
  expect(endsInWords({ arrivals: [main], departures: [cross, main] }, ends)).toBe(
    '25 for arrivals, 25 and 32 for departures',
  );
  expect(endsInWords({ arrivals: [main], departures: [] }, ends)).toBe(
    '25 for arrivals, none for departures',
  );
});

test('[F229] an end that is too short for the subject', () => {
  const length = (m: number) => `${m} m`;
  const short = { use: 'arrivals', name: '07', thereM: 549, neededM: 1700 } as const;
  expect(shortEndWords(short, 'A320', length)).toBe(
    '07 has 549 m for landing, A320 needs 1700 m: the figures stand all the same.',
  );
  expect(shortEndWords({ ...short, use: 'departures' }, 'A320', length)).toMatch(/for the take-off run/);
});

describe('a flow that the survey knows by name', () => {
  const use = (end: 0 | 1) => [{ runway: 'long', end }];
  const west = { arrivals: use(1), departures: use(1) };
  const east = { arrivals: use(0), departures: use(0) };

  test('is found by its ends, whatever their order', () => {
    expect(configurationOf([west, east], { arrivals: use(0), departures: use(0) })).toBe(1);
    const both = { arrivals: [...use(0), ...use(1)], departures: use(0) };
    expect(configurationOf([west, both], { arrivals: [...use(1), ...use(0)], departures: use(0) })).toBe(1);
  });
  test('is not found where one end differs', () => {
    expect(configurationOf([west, east], { arrivals: use(0), departures: use(1) })).toBe(-1);
  });
});
