import { expect, it } from 'vitest';
import { stationWords } from '../../../src/ui/path/station-words';

it('counts an arrival from its threshold, on both sides', () => {
  expect(stationWords('arrival', 1840)).toBe('1,840 m before the threshold');
  expect(stationWords('arrival', 0)).toBe('over the threshold');
  expect(stationWords('arrival', -291)).toBe('291 m beyond the threshold');
});

it('counts a departure from its start', () => {
  expect(stationWords('departure', 1240)).toBe('1,240 m from the start');
  expect(stationWords('departure', 0)).toBe('where the take-off run starts');
});

it('says what is left of a circuit, and what is done of a flight path', () => {
  expect(stationWords('circuit', 2400)).toBe('2,400 m still to fly to the threshold');
  expect(stationWords('flight-path', 360)).toBe('360 m from the first point');
});
