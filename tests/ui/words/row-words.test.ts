import { expect, it } from 'vitest';
import { nothingWords } from '../../../src/ui/words/row-words';

it('[F253] says of a day without rows whether the paths are hidden or out of reach', () => {
  expect(nothingWords(0, 4)).toBe(
    'Every path is hidden behind what is drawn: move the spot or raise the eye.',
  );
  expect(nothingWords(4, 0)).toMatch(/^No path is within reach of the kit/);
  expect(nothingWords(3, 1)).toMatch(/3 are out of the kit’s reach and 1 hidden/);
});
