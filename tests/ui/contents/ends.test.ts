import { expect, test } from 'vitest';
import { oppositeEnds, toggledEnd } from '../../../src/ui/contents/ends';

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
