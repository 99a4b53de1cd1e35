import { describe, expect, it } from 'vitest';
import { skyOf } from '../../../src/figures/light/day-light';
import { clockAt } from '../../../src/time/local-time';
import { riseAndSetWords, sunWords } from '../../../src/ui/light/sun-words';

const sun = (azimuth: number, geometricAltitude: number, altitude = geometricAltitude) => ({
  azimuth,
  altitude,
  geometricAltitude,
});

const words = (at: ReturnType<typeof sun>) => sunWords(at, skyOf(at));

describe('where the sun is', () => {
  it('is named by the compass and its height', () => {
    expect(words(sun(247, 23.9))).toBe('sun in the west-south-west, 24° up');
  });
  it('is on the horizon while its upper edge is seen', () => {
    expect(words(sun(71, -0.8, -0.2))).toBe('sun in the east-north-east, on the horizon');
  });
  it('is said for twilight and night', () => {
    expect(words(sun(292, -4.2))).toBe('civil twilight, sun 4° below the horizon in the west-north-west');
    expect(words(sun(10, -31.4))).toBe('sun 31° below the horizon');
  });
});

describe('sunrise and sunset', () => {
  const clock = (instant: number) => clockAt(instant, 'Europe/Oslo');
  const times = { civilDawn: null, civilDusk: null };
  it('are printed in the time of the airfield', () => {
    const sunrise = Date.parse('2026-03-20T04:44:00Z');
    const sunset = Date.parse('2026-03-20T17:02:00Z');
    expect(riseAndSetWords({ ...times, sunrise, sunset, sunUp: 'rises' }, clock)).toBe(
      'sunrise 05:44, sunset 18:02',
    );
  });
  it('are said in words where the sun does not rise or set', () => {
    const none = { ...times, sunrise: null, sunset: null };
    expect(riseAndSetWords({ ...none, sunUp: 'always' }, clock)).toBe('the sun stays up all day');
    expect(riseAndSetWords({ ...none, sunUp: 'never' }, clock)).toBe('the sun stays down all day');
    const sunrise = Date.parse('2026-05-18T23:10:00Z');
    expect(riseAndSetWords({ ...none, sunrise, sunUp: 'rises' }, clock)).toBe('sunrise 01:10, no sunset');
  });
});
