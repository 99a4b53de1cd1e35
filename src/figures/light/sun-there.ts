import { RAD } from '../geometry/angles';
import type { Sun } from '../types';
import { clearSky, type SkyThere } from './sky';

/** The sun for one spot: degrees, and the direction to it in east, north and up at the eye. */
export interface SunThere {
  readonly sun: Sun;
  readonly east: number;
  readonly north: number;
  readonly up: number;
  /** Azimuth as a level unit vector. */
  readonly levelEast: number;
  readonly levelNorth: number;
  /** Whether an obstacle or the terrain stands before it. */
  readonly hidden: boolean;
  readonly sky: SkyThere;
}

/** Light comes from where the sun appears, so the direction is the refracted one. */
export function sunThere(sun: Sun, hidden = false, sky: SkyThere = clearSky): SunThere {
  const [sin, cos] = [Math.sin(sun.azimuth * RAD), Math.cos(sun.azimuth * RAD)];
  const level = Math.cos(sun.altitude * RAD);
  return {
    sun,
    east: sin * level,
    north: cos * level,
    up: Math.sin(sun.altitude * RAD),
    levelEast: sin,
    levelNorth: cos,
    hidden,
    sky,
  };
}
