import type { Position } from '../../survey/document';
import type { Sun } from '../types';
import { RAD } from '../geometry/angles';
import { stretches, type Stretch } from './stretches';
import { civilTwilightAltitude, sunAt, sunriseAltitude } from './sun';
import { bisect, type SunTimes } from './sun-times';

export type Sky = 'night' | 'twilight' | 'day';

export function skyOf({ geometricAltitude }: Pick<Sun, 'geometricAltitude'>): Sky {
  if (geometricAltitude < civilTwilightAltitude) return 'night';
  return geometricAltitude < sunriseAltitude ? 'twilight' : 'day';
}

/** Night, civil twilight and day between two instants, in order. */
export function skyStretches(position: Position, from: number, to: number): Stretch<Sky>[] {
  return stretches((instant) => skyOf(sunAt(position, instant)), from, to);
}

const hourMs = 3_600_000;

/**
 * The instant between two at which the sun passes the meridian above the pole, to half a second: it goes over
 * from the eastern half of the sky to the western one. Null when that falls outside (a shortened day).
 */
export function solarNoon(position: Position, from: number, to: number): number | null {
  const west = (instant: number) => Math.sin(sunAt(position, instant).azimuth * RAD) < 0;
  for (let t = from; t < to; t += hourMs) {
    const next = Math.min(t + hourMs, to);
    if (!west(t) && west(next)) return bisect(west, t, next);
  }
  return null;
}

/** Instants that photographers choose first; null where the day has none. */
export interface ChosenMoments {
  readonly afterSunrise: number | null;
  readonly beforeSunset: number | null;
  readonly noon: number | null;
}

/** An hour after sunrise, an hour before sunset, and solar noon. */
export function chosenMoments(
  { sunrise, sunset }: Pick<SunTimes, 'sunrise' | 'sunset'>,
  noon: number | null,
): ChosenMoments {
  return {
    afterSunrise: sunrise === null ? null : sunrise + hourMs,
    beforeSunset: sunset === null ? null : sunset - hourMs,
    noon,
  };
}
