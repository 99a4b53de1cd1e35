import { acosDeg } from '../geometry/angles';
import { lightClass } from '../light/light-class';
import { isFlat, mistFactor, type SkyThere } from '../light/sky';
import { glaresInto } from '../glare-on-view';
import type { SunThere } from '../light/sun-there';
import { litFrom } from '../practice';
import { darkCeiling, hazeByAltitude, lightCeiling, lightFactor } from '../score';
import type { LightClass, Score } from '../types';
import type { StillView } from './still-view';

/** What rounding may add to a bound. */
const slack = 1 + 1e-9;

/**
 * The best sample of a path under one sun: that of the highest total, at equal totals the least slant range, and the
 * closest one in sight at night. The same answer as `bestIndex` gives (test F241), but whole blocks of samples that cannot
 * beat the best so far are passed over. `guess`: a sample that may be it, the last answer under a sun nearby.
 */
export function bestUnder(view: StillView, sun: SunThere, guess: number): number {
  const altitude = sun.sun.geometricAltitude;
  const ceiling = lightCeiling(altitude, sun.sky);
  let best = view.closest;
  if (ceiling === 0) return best;
  const { range, most, blocks, hazeRange, hazeElevation } = view;
  const haze = hazeByAltitude(altitude, sun.sky);
  let total = totalAt(view, best, sun);
  // What is hidden is never the best as long as anything is in sight.
  if (view.sight[best] === 0) return best;
  const guessed = totalAt(view, guess, sun);
  if (view.sight[guess] !== 0 && isBetter(guessed, range[guess] as number, total, range[best] as number)) {
    total = guessed;
    best = guess;
  }
  const bound = ceiling * slack;
  const dark = darkCeiling(altitude, sun.sky) / ceiling;
  for (const block of blocks) {
    if (block.most * bound < total) break;
    if (block.level) {
      const least = acosDeg(sun.levelEast * block.east + sun.levelNorth * block.north) - block.spread;
      if (block.most * lightFactor(altitude, least, null, sun.sky) * slack < total) continue;
    }
    for (let i = block.from; i < block.to; i++) {
      if (view.sight[i] === 0) continue;
      // What is cheap to know first: most samples need no angle.
      const cap =
        (most[i] as number) * bound * (1 - (hazeRange[i] as number) * haze * (hazeElevation[i] as number));
      if (cap < total || (cap * dark < total && flankUnder(view, i, sun) === false)) continue;
      const here = totalAt(view, i, sun);
      if (!isBetter(here, range[i] as number, total, range[best] as number)) continue;
      total = here;
      best = i;
    }
  }
  return best;
}

const isBetter = (total: number, range: number, than: number, itsRange: number): boolean =>
  total > than || (total === than && range < itsRange);

/** Degrees by which the light is classed at sample `i`. */
function angleAt(view: StillView, i: number, sun: SunThere): number {
  const [e, n] = [view.east[i] as number, view.north[i] as number];
  if (view.fromBelow[i] === 1) return acosDeg(cosPhase(view, i, sun));
  const ground = view.ground[i] as number;
  return ground > 0 ? acosDeg(-(e * sun.levelEast + n * sun.levelNorth) / ground) : 0;
}

const cosPhase = (view: StillView, i: number, sun: SunThere): number =>
  -(
    (view.east[i] as number) * sun.east +
    (view.north[i] as number) * sun.north +
    (view.up[i] as number) * sun.up
  ) / (view.range[i] as number);

/** Whether the sun reaches the flank that one sees of sample `i`; null where none is seen. */
export function flankUnder(view: StillView, i: number, sun: SunThere): boolean | null {
  if (view.hasFlank[i] === 0) return null;
  const toSun =
    (view.flankEast[i] as number) * sun.east +
    (view.flankNorth[i] as number) * sun.north +
    (view.flankUp[i] as number) * sun.up;
  return toSun > litFrom;
}

const hazeAt = (view: StillView, i: number, altitude: number, sky: SkyThere): number =>
  (1 - (view.hazeRange[i] as number) * (view.hazeElevation[i] as number) * hazeByAltitude(altitude, sky)) *
  mistFactor(view.range[i] as number, sky);

/** Total of the score of sample `i`, 0 to 1. */
export function totalAt(view: StillView, i: number, sun: SunThere): number {
  const reach = view.reach[i] as number;
  if (reach === 0) return 0;
  const altitude = sun.sun.geometricAltitude;
  const light = lightFactor(altitude, angleAt(view, i, sun), flankUnder(view, i, sun), sun.sky);
  return (
    light *
    reach *
    (view.aspect[i] as number) *
    (view.sight[i] as number) *
    hazeAt(view, i, altitude, sun.sky)
  );
}

export const classUnder = (view: StillView, i: number, sun: SunThere): LightClass =>
  lightClass(sun.sun.geometricAltitude, angleAt(view, i, sun), flankUnder(view, i, sun));

export const glareUnder = (view: StillView, i: number, sun: SunThere): boolean =>
  !sun.hidden &&
  !isFlat(sun.sky) &&
  view.sight[i] !== 0 &&
  glaresInto(cosPhase(view, i, sun), view.focal[i] as number, sun, view.framing, view.kit);

/** The factors of the score of sample `i`. */
export function scoreUnder(view: StillView, i: number, sun: SunThere): Score {
  const altitude = sun.sun.geometricAltitude;
  return {
    total: totalAt(view, i, sun),
    light: lightFactor(altitude, angleAt(view, i, sun), flankUnder(view, i, sun), sun.sky),
    reach: view.reach[i] as number,
    aspect: view.aspect[i] as number,
    sight: view.sight[i] as number,
    haze: hazeAt(view, i, altitude, sun.sky),
  };
}
