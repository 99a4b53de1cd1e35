import { expect, it } from 'vitest';
import { readPreferences } from '../../../src/state/preferences.svelte';
import { formatsFor } from '../../../src/ui/formats';
import { box, profileShapes } from '../../../src/ui/sight/profile-shapes';
import { profileWords } from '../../../src/ui/sight/profile-words';

const format = formatsFor(readPreferences(null));
const score = { total: 1, light: 1, reach: 1, aspect: 1, sight: 1, haze: 1 };
const clear = {
  distance: 267,
  eye: 1.7,
  wheels: 40,
  centre: 45,
  fin: 50,
  ground: [
    { at: 0, height: 0 },
    { at: 267, height: 0 },
  ],
  assumed: true,
  obstacles: [],
  ray: [],
  leastVisible: null,
  first: null,
  raise: 0,
};

it('says that its distance is over the ground: the slant range beside it is longer', () => {
  expect(profileWords(clear, { score }, [], format)).toBe(
    'In sight, 267 m away over the ground. Nothing is in the way.',
  );
});

it('leaves a line of text free under the ground', () => {
  expect(profileShapes(clear, 800).y(0)).toBeLessThanOrEqual(box.height - 28);
});
