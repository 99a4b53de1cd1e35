import { expect, it } from 'vitest';
import { readPreferences } from '../../../src/state/preferences.svelte';
import { formatsFor } from '../../../src/ui/formats';
import { endWindWords, windNote } from '../../../src/ui/wind/words';

const format = formatsFor(readPreferences(null));
const none = { headwindKt: 0, crosswindKt: 0 };

it('[F252] a calm is calm at every end and has no north; so has a variable wind', () => {
  expect(endWindWords({ speedKt: 0 }, none, format)).toEqual(['calm', '']);
  expect(endWindWords({ speedKt: 3 }, null, format)).toEqual(['–', '–']);
  expect(endWindWords({ speedKt: 15 }, { headwindKt: 15, crosswindKt: 0 }, format)[0]).toMatch(/ head$/);
  expect(windNote({ from: null }, { magnetic: false, station: null })).toBe('');
  expect(windNote({ from: null }, { magnetic: false, station: 'EPXX' })).toBe('EPXX');
  expect(windNote({ from: 240 }, { magnetic: false, station: 'EPXX' })).toBe('true, EPXX');
});
