import { expect, test } from 'vitest';
import { moved } from '../../../src/ui/search/active-line';
import { runwayWords } from '../../../src/ui/search/runway-words';

test('arrow keys go through the list and round its ends, pages stop there', () => {
  expect(moved(0, 3, 'ArrowDown')).toBe(1);
  expect(moved(2, 3, 'ArrowDown')).toBe(0);
  expect(moved(0, 3, 'ArrowUp')).toBe(2);
  expect(moved(5, 20, 'PageDown')).toBe(13);
  expect(moved(15, 20, 'PageDown')).toBe(19);
  expect(moved(5, 20, 'PageUp')).toBe(0);
});

test('other keys, and lists without lines, change nothing', () => {
  expect(moved(1, 3, 'a')).toBe(1);
  expect(moved(0, 0, 'ArrowUp')).toBe(0);
});

test.each([
  [0, 0, 'no runway in the data: draw it'],
  [0, 1, 'runway not located: draw it'],
  [0, 3, 'runways not located: draw them'],
  [1, 1, '1 runway'],
  [2, 3, '2 runways, 1 more not located'],
])('%d of %d runways located: %s', (locatedRunways, runways, words) => {
  expect(runwayWords({ locatedRunways, runways })).toBe(words);
});
