import type { Sky } from '../../figures/light/day-light';
import type { SunTimes } from '../../figures/light/sun-times';
import type { Sun } from '../../figures/types';
import { compassWords } from '../../units/compass';
import { degrees } from '../../units/format';
import type { Clock } from '../words/lit-words';

/** Where the sun is, "sun in the west-south-west, 24° up". Sunrise and sunset count by the sun's upper edge. */
export function sunWords({ azimuth, altitude }: Sun, sky: Sky): string {
  const where = compassWords(azimuth);
  if (sky === 'day')
    return `sun in the ${where}, ${altitude < 0.5 ? 'on the horizon' : `${degrees(altitude)} up`}`;
  return sky === 'twilight'
    ? `civil twilight, sun ${degrees(-altitude)} below the horizon in the ${where}`
    : `sun ${degrees(-altitude)} below the horizon`;
}

/** When the sun rises and sets on a day, in words also where it does neither. */
export function riseAndSetWords({ sunrise, sunset, sunUp }: SunTimes, clock: Clock): string {
  if (sunUp === 'always') return 'the sun stays up all day';
  if (sunUp === 'never') return 'the sun stays down all day';
  const rise = sunrise === null ? 'no sunrise' : `sunrise ${clock(sunrise)}`;
  const set = sunset === null ? 'no sunset' : `sunset ${clock(sunset)}`;
  return `${rise}, ${set}`;
}
