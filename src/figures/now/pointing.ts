import { angleBetween, wrap180, wrap360 } from '../geometry/angles';
import { sunCautionWithin } from '../practice';
import type { Sun } from '../types';

/** Which way to turn from where a device points. */
export interface Pointing {
  /** Degrees from true north. */
  readonly heading: number;
  /** Degrees to turn to the target, positive to the right; null without a target. */
  readonly turn: number | null;
  /** The device points so near to the sun that nobody should look through a lens. */
  readonly sunAhead: boolean;
}

/** `compass`: degrees from magnetic north; `declination`: degrees, east positive; `target`: a true bearing. */
export function pointing(
  compass: number,
  declination: number,
  target: number | null,
  sun: Pick<Sun, 'azimuth' | 'altitude'>,
): Pointing {
  const heading = wrap360(compass + declination);
  return {
    heading,
    turn: target === null ? null : wrap180(target - heading),
    sunAhead: sun.altitude > -1 && angleBetween(heading, sun.azimuth) <= sunCautionWithin,
  };
}
