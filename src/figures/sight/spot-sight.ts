import type { Position } from '../../survey/document';
import { monthAt } from '../../time/local-time';
import { RAD } from '../geometry/angles';
import { dot, mapped, type Frame } from '../geometry/earth';
import { sunriseAltitude } from '../light/sun';
import type { Framing } from '../optics/framing';
import type { Path } from '../traffic/paths';
import type { Sun } from '../types';
import { nameOf } from './hidden';
import type { SightLines, SkyLine } from './sight-lines';
import { standing, type Surroundings } from './surroundings';
import { targetsOf } from './targets';

/** An eye at a spot: its own frame and m above mean sea level. */
interface EyeThere {
  readonly frame: Frame;
  readonly elevation: number;
}

/** Instants in which the same obstacles hide, by their place in the list. */
export interface Season {
  readonly does: Uint8Array;
  readonly instants: readonly number[];
}

/** Groups instants (ms since 1970) by what the leaves do in the site's month. */
export function seasons(around: Surroundings, timeZone: string, instants: readonly number[]): Season[] {
  const all = instants.map((_, i) => i);
  if (!around.leafy) return [{ does: standing(around, 1), instants: all }];
  const months = instants.map((instant) => monthAt(instant, timeZone));
  return [...new Set(months)].map((month) => ({
    does: standing(around, month),
    instants: all.filter((i) => months[i] === month),
  }));
}

/** Stands sight lines at a spot, ready to look along these paths and at the sun. They hold until they stand elsewhere. */
export function sightFrom(
  lines: SightLines,
  around: Surroundings,
  does: Uint8Array,
  position: Position,
  eye: EyeThere,
  paths: readonly Path[],
  framing: Framing,
  suns: readonly InTheSky[],
): SightLines {
  const [x, y] = mapped(around.frame, position);
  const targets = paths.map((path) => targetsAlong(path, framing, around));
  const sky = suns.map((sun) => skyLine(sun, eye.frame, around.frame));
  lines.stand(around, does, x, y, eye.elevation, targets, sky);
  return lines;
}

export const targetsAlong = (path: Path, { length, height }: Framing, { frame }: Surroundings) =>
  targetsOf(path.samples, length, height, frame);

/** What hides the sun from where the lines stand, an obstacle's id or "terrain"; null when nothing does, or it is down. */
export const sunBehind = (sight: SightLines, sun: Sun, eye: EyeThere, around: Surroundings) =>
  sun.geometricAltitude > sunriseAltitude ? behind(sight, sun, eye, around) : null;

/** What hides a body in the sky from where the lines stand, an obstacle's id or "terrain"; null for nothing. */
export const behind = (sight: SightLines, at: InTheSky, eye: EyeThere, around: Surroundings) =>
  nameOf(around, sight.towards(skyLine(at, eye.frame, around.frame)));

/** Where a body appears: degrees, azimuth from true north, altitude refracted. */
type InTheSky = Pick<Sun, 'azimuth' | 'altitude'>;

/** Where sun or moon appears, in the site frame: its north differs from the spot's by the convergence of the meridians. */
function skyLine(sun: InTheSky, at: Frame, site: Frame): SkyLine {
  const [e, n] = [Math.sin(sun.azimuth * RAD), Math.cos(sun.azimuth * RAD)];
  const east = e * dot(at.east, site.east) + n * dot(at.north, site.east);
  const north = e * dot(at.east, site.north) + n * dot(at.north, site.north);
  const level = Math.hypot(east, north) || 1;
  return { east: east / level, north: north / level, steepness: Math.tan(sun.altitude * RAD) };
}
