import type { Moon, MoonPhase } from '../../figures/light/moon';
import type { Darkness, Night } from '../../figures/light/night';
import { compassWords } from '../../units/compass';
import { degrees, share } from '../../units/format';
import type { Clock } from './lit-words';

export const phaseWords: Readonly<Record<MoonPhase, string>> = {
  new: 'new moon',
  'waxing-crescent': 'waxing crescent',
  'first-quarter': 'first quarter',
  'waxing-gibbous': 'waxing gibbous',
  full: 'full moon',
  'waning-gibbous': 'waning gibbous',
  'last-quarter': 'last quarter',
  'waning-crescent': 'waning crescent',
};

/** What follows when a darkness ends or begins, as almanacs call it. */
export const darkWords: Readonly<Record<Darkness, string>> = {
  day: 'day',
  civil: 'civil twilight',
  nautical: 'nautical twilight',
  astronomical: 'astronomical twilight',
  night: 'night',
};

/** "Dusk: civil 20:41, nautical 21:25, astronomical 22:14": when each twilight of the evening is over. */
export function duskWords({ sky }: Night, clock: Clock): string {
  const over = sky.flatMap((stretch, i) => {
    const after = sky[i + 1];
    const falling = after !== undefined && order[after.value] > order[stretch.value];
    return falling && stretch.value !== 'day' && stretch.value !== 'night'
      ? [`${stretch.value} to ${clock(stretch.to)}`]
      : [];
  });
  return over.length > 0 ? `Dusk: ${over.join(', ')}.` : 'It does not get dark on this day.';
}
const order: Readonly<Record<Darkness, number>> = {
  day: 0,
  civil: 1,
  nautical: 2,
  astronomical: 3,
  night: 4,
};

/** "Moon: waxing gibbous, 78 % lit; at 21:30 23° up in the south-east." */
export function moonWords({ phase, lit }: Night, moon: Moon, at: string): string {
  const where =
    moon.altitude > 0 ? `${degrees(moon.altitude)} up in the ${compassWords(moon.azimuth)}` : 'down';
  return `Moon: ${phaseWords[phase]}, ${share(lit)} lit; at ${at} ${where}.`;
}
