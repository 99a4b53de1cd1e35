import { expect, it } from 'vitest';
import type { DayRow } from '../../../src/figures/when/day-rows';
import type { LightEntry, LightRun } from '../../../src/figures/when/light-row';
import { nothingWords, rowWords } from '../../../src/ui/words/row-words';

it('[F253] says of a day without rows whether the paths are hidden or out of reach', () => {
  expect(nothingWords(0, 4)).toBe(
    'Every path is hidden behind what is drawn: move the spot or raise the eye.',
  );
  expect(nothingWords(4, 0)).toMatch(/^No path is within reach of the kit/);
  expect(nothingWords(3, 1)).toMatch(/3 are out of the kit’s reach and 1 hidden/);
});

it('[U972] says of a row what the light is worth, one stretch for what reads the same, and flat light under overcast', () => {
  const entry: LightEntry = { light: 'front-lit', glare: false, flat: false, blocked: false, worth: 'good' };
  const run = (from: number, to: number, more: Partial<LightEntry>): LightRun => ({
    from,
    to,
    ...entry,
    ...more,
  });
  const runs = [
    run(0, 5, { light: 'dark', worth: 'not worth waiting for' }),
    // Twilight is one, though its worth may change.
    run(5, 6, { light: 'civil-twilight', worth: 'not worth waiting for' }),
    run(6, 7, { light: 'civil-twilight', worth: 'poor' }),
    run(7, 10, { worth: 'good' }),
    run(10, 14, { worth: 'fair' }),
    run(14, 18, { flat: true, worth: 'fair' }),
  ];
  const row = { runs, light: { light: new Uint8Array(24) } } as unknown as DayRow;
  const day = { from: 0, to: 24 } as Parameters<typeof rowWords>[1];
  expect(rowWords(row, day, (hour) => `${hour}:00`)).toBe(
    'twilight 5:00 to 7:00, front-lit, good, 7:00 to 10:00, front-lit, fair, 10:00 to 14:00, flat light: either side, fair, 14:00 to 18:00',
  );
});
