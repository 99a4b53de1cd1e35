import type { Body } from '../../survey/schema/kit';
import type { Subject } from '../../survey/schema/subject';
import { DEG, RAD } from '../geometry/angles';
import { panError, propellerArc, rotorArc } from '../practice';

/**
 * Degrees per second at which the line of sight turns: v sin(aspect) / R. `speed` m/s along the path, `aspect`
 * degrees between the path and the line of sight, `range` m.
 */
export const panRate = (speed: number, aspect: number, range: number): number =>
  ((speed * Math.sin(aspect * RAD)) / range) * DEG;

/** Pixels that an image moves over the sensor each second at a rate in degrees per second: f w over the pixel's width. */
export const pixelsPerSecond = (rate: number, focalLength: number, body: Body): number =>
  (focalLength * rate * RAD * body.pixelsWide) / body.sensorWidth;

/** Seconds in which a point at that rate crosses the frame's long side; null when it stands still. */
export function secondsAcross(rate: number, focalLength: number, body: Body): number | null {
  const angle = 2 * Math.atan(body.sensorWidth / (2 * focalLength)) * DEG;
  return rate > 0 ? angle / rate : null;
}

/** The slowest shutters in s that keep the blur within some pixels; null: any will do, nothing moves. */
export interface SlowestShutters {
  /** The camera held still. */
  readonly still: number | null;
  /** The camera following as well as a hand does. */
  readonly panned: number | null;
}

export function slowestShutters(
  rate: number,
  focalLength: number,
  body: Body,
  pixels: number,
): SlowestShutters {
  const speed = pixelsPerSecond(rate, focalLength, body);
  if (!(speed > 0)) return { still: null, panned: null };
  return { still: pixels / speed, panned: pixels / (speed * panError) };
}

/** Degrees that a blade turns while the shutter is open for `shutter` s: 6 rpm t. */
export const bladeAngle = (rpm: number, shutter: number): number => 6 * rpm * shutter;

/** What the shutter must leave of a turning propeller or rotor; null for what has no blades, or none of known speed. */
export interface BladeWish {
  readonly rpm: number;
  readonly blades: number | null;
  /** Degrees that a blade should sweep at least. */
  readonly arc: number;
  /** s that this takes: no faster than that. */
  readonly shutter: number;
}

export function bladeWish({ propulsion, rpm, blades }: Subject): BladeWish | null {
  if (rpm === null || (propulsion !== 'propeller' && propulsion !== 'rotor')) return null;
  const arc = propulsion === 'rotor' ? rotorArc : propellerArc;
  return { rpm, blades, arc, shutter: arc / (6 * rpm) };
}
