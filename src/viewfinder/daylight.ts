import { Color, type Vector3 } from 'three';
import type { Sky } from '../figures/optics/exposure';
import { RAD } from '../survey/angles';

/** The light of a moment as it is drawn: linear colours, not measures. */
export interface Daylight {
  readonly sun: Color;
  /** The open sky, and what the ground throws back. */
  readonly above: Color;
  readonly below: Color;
  readonly zenith: Color;
  readonly horizon: Color;
  /** The bow of twilight: what the horizon under the sun is brighter by, black by day and at night. */
  readonly bow: Color;
  /** How bright the sky is round the sun. */
  readonly glow: number;
  readonly sunUp: boolean;
  /** The moon high in a sky as dark, before the air dims it; black behind cloud. */
  readonly moon: Color;
  /** m at which things fade into the horizon. */
  readonly sightM: number;
}

type Rgb = readonly [number, number, number];
/**
 * By the sun's altitude in degrees: direct sun, skylight, zenith, horizon away from the sun, and how much brighter it is
 * towards it. As a camera that opens up with the dark shows it, but not all the way: night stays night. Chosen by eye.
 */
const clear: readonly (readonly [
  altitude: number,
  sun: Rgb,
  sky: Rgb,
  zenith: Rgb,
  horizon: Rgb,
  bow: Rgb,
])[] = [
  [-18, [0, 0, 0], [0.014, 0.016, 0.026], [0.0035, 0.0045, 0.0105], [0.0095, 0.0105, 0.017], [0, 0, 0]],
  [
    -12,
    [0, 0, 0],
    [0.026, 0.031, 0.056],
    [0.007, 0.0105, 0.029],
    [0.019, 0.024, 0.046],
    [0.052, 0.034, 0.02],
  ],
  [-9, [0, 0, 0], [0.052, 0.062, 0.11], [0.0135, 0.022, 0.062], [0.038, 0.048, 0.088], [0.15, 0.085, 0.035]],
  [-6, [0.02, 0.015, 0.02], [0.1, 0.12, 0.2], [0.03, 0.05, 0.128], [0.1, 0.115, 0.18], [0.34, 0.18, 0.06]],
  [-2, [0.1, 0.05, 0.04], [0.3, 0.33, 0.46], [0.09, 0.145, 0.3], [0.36, 0.31, 0.35], [0.38, 0.17, 0.02]],
  [-0.833, [0.25, 0.11, 0.05], [0.42, 0.44, 0.56], [0.12, 0.19, 0.38], [0.52, 0.42, 0.42], [0.34, 0.14, 0.0]],
  [2, [2.1, 0.95, 0.38], [0.55, 0.55, 0.64], [0.16, 0.26, 0.5], [0.7, 0.58, 0.5], [0.2, 0.09, 0]],
  [8, [2.6, 1.75, 1.05], [0.68, 0.72, 0.84], [0.17, 0.31, 0.6], [0.72, 0.68, 0.62], [0, 0, 0]],
  [20, [2.7, 2.3, 1.85], [0.8, 0.87, 1], [0.15, 0.31, 0.63], [0.62, 0.69, 0.75], [0, 0, 0]],
  [60, [2.8, 2.62, 2.36], [0.9, 0.97, 1.08], [0.12, 0.28, 0.6], [0.6, 0.69, 0.78], [0, 0, 0]],
];

/** The moon against the sky by the sun's altitude in degrees: pale by day, burnt out once the camera opens up. Chosen by eye. */
const moonlight: readonly (readonly [altitude: number, strength: number])[] = [
  [-12, 1.7],
  [-6, 1.25],
  [0, 0.7],
  [10, 0.34],
];

const mixed = (a: Rgb, b: Rgb, t: number): Color =>
  new Color(a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t, a[2] + (b[2] - a[2]) * t);

/** How much of the sun comes through, how much the sky evens out to grey, and m of sight. */
const veils: Readonly<Record<Sky, readonly [sun: number, grey: number, sightM: number]>> = {
  clear: [1, 0, 30_000],
  hazy: [0.55, 0.45, 9_000],
  overcast: [0.02, 0.92, 14_000],
  heavy: [0, 1, 8_000],
};

/** Daylight for a sun at a geometric altitude in degrees. */
export function daylight(altitude: number, sky: Sky): Daylight {
  const last = clear.length - 1;
  let i = 0;
  while (i < last - 1 && (clear[i + 1]?.[0] ?? Infinity) < altitude) i++;
  const [a, b] = [clear[i], clear[i + 1]] as [(typeof clear)[number], (typeof clear)[number]];
  const t = Math.max(0, Math.min(1, (altitude - a[0]) / (b[0] - a[0])));
  const [through, grey, sightM] = veils[sky];
  const sun = mixed(a[1], b[1], t).multiplyScalar(through);
  const above = mixed(a[2], b[2], t);
  const zenith = mixed(a[3], b[3], t);
  const horizon = mixed(a[4], b[4], t);
  const bow = mixed(a[5], b[5], t).multiplyScalar(1 - grey);
  const brightness = (above.r + above.g + above.b) / 3;
  const even = new Color(1, 1.01, 1.03).multiplyScalar(brightness * (sky === 'heavy' ? 0.62 : 0.8));
  above.lerp(even.clone().multiplyScalar(1.35), grey);
  zenith.lerp(even.clone().multiplyScalar(0.72), grey);
  horizon.lerp(even.clone().multiplyScalar(0.86), grey);
  const below = new Color(0.36, 0.36, 0.27).multiplyScalar(brightness * 0.7 + 0.1 * sun.g);
  return {
    sun,
    above,
    below,
    zenith,
    horizon,
    bow,
    glow: through * Math.max(0, Math.min(1, (altitude + 4) / 6)),
    sunUp: altitude > -0.833,
    moon: new Color(1, 0.97, 0.9).multiplyScalar(moonStrength(altitude) * through),
    sightM,
  };
}

function moonStrength(sunAltitude: number): number {
  let [low, value]: readonly [number, number] = moonlight[0] ?? [0, 0];
  for (const [altitude, strength] of moonlight) {
    if (sunAltitude < altitude)
      return altitude === low
        ? strength
        : value + ((strength - value) * (sunAltitude - low)) / (altitude - low);
    [low, value] = [altitude, strength];
  }
  return value;
}

/** Degrees of altitude below which the air is taken to be no thicker. */
const lowest = 0.3;

/**
 * Shares of red, green and blue that the air lets through from a body at an apparent altitude in degrees: 0.11, 0.2 and
 * 0.36 magnitudes for each thickness of clear air (from memory, CP), so many times as thick as Kasten and Young (1989) have it.
 */
export function throughAir(altitude: number): Rgb {
  const h = Math.max(lowest, altitude);
  const thickness = 1 / (Math.sin(h * RAD) + 0.50572 * (h + 6.07995) ** -1.6364);
  const left = (magnitudes: number) => 10 ** (-0.4 * magnitudes * thickness);
  return [left(0.11), left(0.2), left(0.36)];
}

/** What a direction of the sky shows, as the shader below has it; for the exposure of what stands before it. */
export function skyTowards(light: Daylight, direction: Vector3, sun: Vector3): number {
  const up = Math.sqrt(Math.max(0, direction.y));
  const c = Math.max(0, direction.dot(sun));
  const base = light.horizon.clone().lerp(light.zenith, up);
  base.add(light.bow.clone().multiplyScalar(bowTowards(direction, sun)));
  const glow = light.glow * (1.5 * c ** 24 + 2.2 * c ** 220);
  return 0.3 * base.r + 0.6 * base.g + 0.1 * base.b + glow;
}

function bowTowards(direction: Vector3, sun: Vector3): number {
  const level = Math.hypot(direction.x, direction.z) * Math.hypot(sun.x, sun.z);
  const beside = level > 0 ? (direction.x * sun.x + direction.z * sun.z) / level : 0;
  return (0.5 + 0.5 * beside) ** 3 * Math.exp(-Math.max(0, direction.y) / 0.13);
}
