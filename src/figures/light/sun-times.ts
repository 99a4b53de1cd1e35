import type { Position } from '../../survey/document';
import { civilTwilightAltitude, sunAt, sunriseAltitude } from './sun';

/** First crossings within a stretch of time, as instants; null where there is none. */
export interface SunTimes {
  readonly civilDawn: number | null;
  readonly sunrise: number | null;
  readonly sunset: number | null;
  readonly civilDusk: number | null;
  readonly sunUp: 'rises' | 'always' | 'never';
}

const stepMs = 600_000;

/**
 * When the sun rises and sets between two instants (a civil day: `to` excluded), for sea level and the upper limb,
 * as almanacs print it; within about half a minute of USNO.
 */
export function sunTimes(position: Position, from: number, to: number): SunTimes {
  const altitude = (t: number) => sunAt(position, t).geometricAltitude;
  const sunrise = crossing(altitude, from, to, sunriseAltitude, 1);
  const sunset = crossing(altitude, from, to, sunriseAltitude, -1);
  const up = altitude(from) > sunriseAltitude;
  return {
    civilDawn: crossing(altitude, from, to, civilTwilightAltitude, 1),
    sunrise,
    sunset,
    civilDusk: crossing(altitude, from, to, civilTwilightAltitude, -1),
    sunUp: sunrise !== null || sunset !== null ? 'rises' : up ? 'always' : 'never',
  };
}

/** The first instant in [from, to) at which `value` passes `level` upwards (sign 1) or downwards (sign -1). */
function crossing(
  value: (t: number) => number,
  from: number,
  to: number,
  level: number,
  sign: 1 | -1,
): number | null {
  let before = sign * (value(from) - level);
  for (let t = from; t < to; t += stepMs) {
    const next = Math.min(t + stepMs, to);
    const after = sign * (value(next) - level);
    if (before < 0 && after >= 0) return bisect((x) => sign * (value(x) - level) >= 0, t, next);
    before = after;
  }
  return null;
}

/** The instant between `from` and `to` at which `reached` turns from false to true, to half a second. */
export function bisect(reached: (t: number) => boolean, from: number, to: number): number {
  let [a, b] = [from, to];
  while (b - a > 500) {
    const middle = (a + b) / 2;
    if (reached(middle)) b = middle;
    else a = middle;
  }
  return Math.round(b);
}
