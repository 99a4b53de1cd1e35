import { expect, it } from 'vitest';
import { readPreferences } from '../../../src/state/preferences.svelte';
import { formatsFor } from '../../../src/ui/formats';
import { heightWords, stationWords } from '../../../src/ui/words/station-words';

const format = formatsFor(readPreferences(null));

it('counts an arrival from its threshold, on both sides', () => {
  expect(stationWords('arrival', 1840, format)).toBe('1,840 m before the threshold');
  expect(stationWords('arrival', 0, format)).toBe('over the threshold');
  expect(stationWords('arrival', -291, format)).toBe('291 m beyond the threshold');
});

it('counts a departure from its start', () => {
  expect(stationWords('departure', 1240, format)).toBe('1,240 m from the start');
  expect(stationWords('departure', 0, format)).toBe('where the take-off run starts');
});

it('says what is left of a circuit, and what is done of a flight path', () => {
  expect(stationWords('circuit', 2400, format)).toBe('2,400 m still to fly to the threshold');
  expect(stationWords('flight-path', 360, format)).toBe('360 m from the first point');
});

it('[U60] says height 0 on the ground, however the runway slopes, and the centre in the air', () => {
  expect(heightWords({ height: -7.2, onGround: true }, format)).toBe('0 m (0 ft), on the ground');
  expect(heightWords({ height: 6.1, onGround: true }, format)).toBe('0 m (0 ft), on the ground');
  expect(heightWords({ height: 120, onGround: false }, format)).toBe('120 m (394 ft)');
});
