import { inject, expect, it } from 'vitest';
import { killAgainAndAgain, type Kill } from '../soak/kills';

/** A handful of what `npm run soak` does for long; the seed is pinned, the moment of a kill depends on the machine. */
it('[K6] loses no edit older than a second, and none that it said was kept, when the browser is killed', async () => {
  const kills: Kill[] = [];
  const options = { url: inject('baseUrl'), kills: 3, seed: 20, map: false, between: [600, 2_500] } as const;
  for await (const kill of killAgainAndAgain(options)) kills.push(kill);
  expect(kills).toHaveLength(3);
  expect(kills.map(({ lostOld, lostKept }) => ({ lostOld, lostKept }))).toEqual(
    Array(3).fill({ lostOld: 0, lostKept: 0 }),
  );
  // The runs did edit: otherwise there was nothing to lose.
  expect(kills.reduce((sum, { edits }) => sum + edits, 0)).toBeGreaterThan(3);
});
