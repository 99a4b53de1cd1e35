import { expect, it } from 'vitest';
import { readPreferences } from '../../../src/state/preferences.svelte';
import { formatsFor } from '../../../src/ui/formats';
import { meshWords } from '../../../src/ui/words/sight-words';

const format = formatsFor(readPreferences(null));
const obstacles = [
  { id: 'f', name: 'Perimeter fence' },
  { id: 'g', name: null },
];
const words = (...meshes: Parameters<typeof meshWords>[0]) => meshWords(meshes, 0.5, obstacles, format);

it('says how to shoot through a fence that one can step up to, and how far off another stands', () => {
  const beside = { id: 'f', distance: 3.2, beside: true };
  const off = { id: 'g', distance: 182.4, beside: false };
  const hold = 'Through Perimeter fence: hold the lens within 0.5 m of it, at its widest aperture.';
  expect(words(beside)).toBe(hold);
  expect(words({ ...off, id: 'f' })).toBe('Seen through Perimeter fence, 182 m away.');
  expect(words(off, beside)).toBe(`${hold} Seen through an obstacle, 182 m away.`);
});
