import { getMoonIllumination, getMoonPosition } from 'suncalc';
import type { Position } from '../../survey/document';

/** The moon from a place. Degrees; azimuth from true north, altitude apparent. */
export interface Moon {
  readonly azimuth: number;
  readonly altitude: number;
  /** Share of the disc that is lit, 0 to 1. */
  readonly lit: number;
  /** 0 new, 0.25 first quarter, 0.5 full, 0.75 last quarter. */
  readonly phase: number;
}

/**
 * The moon from a place at an instant (ms since 1970, UTC). Against JPL Horizons altitude and azimuth are within 0.2
 * degrees, the lit share within a hundredth.
 */
export function moonAt([lng, lat]: Position, instant: number): Moon {
  const date = new Date(instant);
  const { azimuth, altitude } = getMoonPosition(date, lat, lng);
  const { fraction, phase } = getMoonIllumination(date);
  return { azimuth, altitude, lit: fraction, phase };
}

const moonPhases = [
  'new',
  'waxing-crescent',
  'first-quarter',
  'waxing-gibbous',
  'full',
  'waning-gibbous',
  'last-quarter',
  'waning-crescent',
] as const;
export type MoonPhase = (typeof moonPhases)[number];

/** Shares of a lunation to each side of new, quarter and full that go by that name: a day and a half. */
const byName = 0.05;

/** The name of a phase: the four principal ones for a day or so about them, the stretches in between for the rest. */
export function moonPhase(phase: number): MoonPhase {
  const quarter = Math.round(phase * 4);
  const principal = Math.abs(phase - quarter / 4) <= byName;
  const eighth = principal ? 2 * (quarter % 4) : 2 * Math.floor((phase % 1) * 4) + 1;
  return moonPhases[eighth] ?? 'new';
}
