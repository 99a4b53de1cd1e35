import { describe, expect, it } from 'vitest';
import { timeZoneAt } from '../../src/imports/time-zone';

describe('time zone of a position', () => {
  // Cities and their IANA zones are general knowledge (tz database).
  it.each<[[number, number], string]>([
    [[8.55, 47.45], 'Europe/Zurich'],
    [[-73.78, 40.64], 'America/New_York'],
    [[151.18, -33.95], 'Australia/Sydney'],
    [[85.36, 27.7], 'Asia/Kathmandu'],
    [[-176.65, 51.88], 'America/Adak'],
    [[178.56, -18.04], 'Pacific/Fiji'],
  ])('%j lies in %s', async (position, timeZone) => {
    expect(await timeZoneAt(position)).toEqual({ timeZone, guessed: false });
  });

  it.each<[number, string]>([
    [0, 'Etc/GMT'],
    [-7.4, 'Etc/GMT'],
    [37.6, 'Etc/GMT-3'],
    [-118.4, 'Etc/GMT+8'],
    [180, 'Etc/GMT-12'],
    [-180, 'Etc/GMT+12'],
  ])(
    '[C7] without the borders, longitude %d has the zone %s and says that it is a guess',
    async (lng, timeZone) => {
      const offline = () => Promise.reject(new Error('Failed to fetch dynamically imported module'));
      expect(await timeZoneAt([lng, 51], offline)).toEqual({ timeZone, guessed: true });
    },
  );

  it('[C7] a zone that this machine does not know is a guess too, and one it can count in', async () => {
    const newer = () => Promise.resolve(() => 'Europe/Atlantis');
    const { timeZone, guessed } = await timeZoneAt([-30.2, 38], newer);
    expect(guessed).toBe(true);
    // Two hours behind UTC: 12:00 UTC reads 10:00.
    expect(new Date(Date.UTC(2026, 5, 15, 12)).toLocaleTimeString('en-GB', { timeZone })).toBe('10:00:00');
  });

  it('[C7] a position out of range is a guess, not a crash', async () => {
    expect(await timeZoneAt([12, 95])).toEqual({ timeZone: 'Etc/GMT-1', guessed: true });
  });
});
