import type { Position } from '../../survey/document';
import { moonAt, moonPhase, type MoonPhase } from './moon';
import { stretches, type Stretch } from './stretches';
import { civilTwilightAltitude, sunAt, sunriseAltitude } from './sun';

/** How dark the sky is: day, then the three twilights (the sun down to 6, 12 and 18 degrees under the horizon), then night. */
export type Darkness = 'day' | 'civil' | 'nautical' | 'astronomical' | 'night';

const nauticalAltitude = -12;
const astronomicalAltitude = -18;

/** `sunAltitude`: geometric, degrees. */
function darknessAt(sunAltitude: number): Darkness {
  if (sunAltitude >= sunriseAltitude) return 'day';
  if (sunAltitude >= civilTwilightAltitude) return 'civil';
  if (sunAltitude >= nauticalAltitude) return 'nautical';
  return sunAltitude >= astronomicalAltitude ? 'astronomical' : 'night';
}

/** Apparent altitude of the moon's centre, in degrees, at which its upper edge rises: its mean radius below the horizon. */
const moonriseAltitude = -0.26;

/** A civil day by its darkness and its moon: `to` excluded. */
export interface Night {
  readonly sky: readonly Stretch<Darkness>[];
  readonly moon: readonly Stretch<'up' | 'down'>[];
  /** Of the moon half-way through the day. */
  readonly lit: number;
  readonly phase: MoonPhase;
}

export function nightOf(position: Position, from: number, to: number): Night {
  const { lit, phase } = moonAt(position, (from + to) / 2);
  return {
    sky: stretches((instant) => darknessAt(sunAt(position, instant).geometricAltitude), from, to),
    moon: stretches(
      (instant) => (moonAt(position, instant).altitude > moonriseAltitude ? 'up' : 'down'),
      from,
      to,
    ),
    lit,
    phase: moonPhase(phase),
  };
}
