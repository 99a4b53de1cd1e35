import { expect, it } from 'vitest';
import { readPreferences } from '../../../src/state/preferences.svelte';
import { formatsFor } from '../../../src/ui/formats';
import { endWindWords, flowName, windNote } from '../../../src/ui/wind/words';

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

it('[F953] names the ends that a wind puts in use; in calm either end of the main runway', () => {
  const ends = ['07', '25', '14'].map((designator, i) => ({
    ref: { runway: i < 2 ? 'main' : 'cross', end: (i % 2) as 0 | 1 },
    designator,
    closed: false,
  }));
  const [one, other, cross] = ends.map(({ ref }) => ref);
  if (!one || !other || !cross) throw new Error('expected three ends');
  expect(flowName({ arrivals: [one], departures: [one], either: false }, ends)).toBe('07');
  expect(flowName({ arrivals: [one, other], departures: [one, other], either: true }, ends)).toBe('07 or 25');
  expect(flowName({ arrivals: [one], departures: [cross] }, ends)).toBe('07 in, 14 out');
});
