import { describe, expect, it } from 'vitest';
import { correctionFromClock } from '../../../src/figures/log/clock-correction';

const zone = 'Europe/Warsaw';
const own = (iso: string) => Date.parse(iso);

describe('[L63] a camera’s clock put right from a picture of a clock', () => {
  it.each([
    ['to the second', '2026-06-21T16:00:00Z', '18:01:30', 90],
    ['without seconds: the middle of that minute', '2026-06-21T16:00:00Z', '18:01', 90],
    ['the half of the day', '2026-06-21T16:00:00Z', '6:01:30 pm', 90],
    [
      'a camera left on winter time is an hour behind, not a day ahead',
      '2026-06-21T15:00:00Z',
      '18:00:00',
      3600,
    ],
    ['round midnight the nearer day', '2026-06-21T21:59:00Z', '00:02:00', 180],
    ['and the other way', '2026-06-21T22:01:00Z', '23:58:00', -180],
    [
      'a camera whose date is wrong: the date that was typed',
      '2025-01-01T00:00:00Z',
      '2026-06-21 18:00:00',
      46_368_000,
    ],
    [
      'the night that has an hour twice: the later one where it is nearer',
      '2026-10-25T01:29:00Z',
      '02:30:00',
      60,
    ],
    ['the earlier one where that is', '2026-10-25T00:29:00Z', '02:30:00', 60],
  ])('%s', (_, camera, shown, seconds) => {
    expect(correctionFromClock(own(camera), shown, zone)).toBe(seconds);
  });

  it('what is no time is none', () => {
    for (const text of ['', 'noon', '25:00', '18:01:75', '2026-02-30 18:00', '18'])
      expect(correctionFromClock(0, text, zone)).toBeNull();
  });
});
