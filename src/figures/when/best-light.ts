import { acosDeg } from '../geometry/angles';
import { cosineLimit, lightByAngle, neededFactor } from '../cosine-limits';
import { lightClass } from '../light/light-class';
import { isFlat, mistFactor, type SkyThere } from '../light/sky';
import { glaresInto } from '../glare-on-view';
import { sunriseAltitude } from '../light/sun';
import type { SunThere } from '../light/sun-there';
import { darkFlankFactor, litFrom } from '../practice';
import { darkCeiling, hazeByAltitude, lightCeiling, lightFactor } from '../score';
import type { LightClass, Score } from '../types';
import {
  blockCosSpread,
  blockEach,
  blockEast,
  blockFlankEast,
  blockFlankNorth,
  blockFlankSpread,
  blockFlankUp,
  blockFrom,
  blockHaze,
  blockMost,
  blockNorth,
  blockSinSpread,
  blockTo,
} from './blocks';
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
  const { closest, range, reach, aspect, sight, most: mostOf, haze: hazes, blocks } = view;
  // What is hidden is never the best as long as anything is in sight.
  if (ceiling === 0 || sight[closest] === 0) return closest;
  let best = sight[guess] === 0 ? closest : guess;
  let total = totalAt(view, best, sun);
  const haze = hazeByAltitude(altitude, sun.sky);
  const bound = ceiling * slack;
  const darkest = darkCeiling(altitude, sun.sky);
  const { always, byAngle } = lightByAngle(altitude, sun.sky);
  for (let o = 0; o < blocks.length; o += blockEach) {
    const greatest = blocks[o + blockMost] as number;
    if (greatest * bound < total) break;
    const room = greatest * (1 - haze * (blocks[o + blockHaze] as number));
    const toSun =
      (blocks[o + blockFlankEast] as number) * sun.east +
      (blocks[o + blockFlankNorth] as number) * sun.north +
      (blocks[o + blockFlankUp] as number) * sun.up +
      (blocks[o + blockFlankSpread] as number);
    let needed = neededFactor(total, room, always, byAngle);
    if (toSun < litFrom) needed /= darkFlankFactor;
    if (needed > 1) continue;
    if (needed > 0) {
      const cosine =
        (blocks[o + blockEast] as number) * sun.levelEast +
        (blocks[o + blockNorth] as number) * sun.levelNorth;
      const cosSpread = blocks[o + blockCosSpread] as number;
      if (cosine < cosSpread) {
        const sine = Math.sqrt(1 - cosine * cosine);
        if (cosine * cosSpread + sine * (blocks[o + blockSinSpread] as number) < cosineLimit(needed))
          continue;
      }
    }
    const to = blocks[o + blockTo] as number;
    for (let i = blocks[o + blockFrom] as number; i < to; i++) {
      if (sight[i] === 0) continue;
      // What is cheap to know first: most samples need no flank, and most of the others no angle.
      const clear = (mostOf[i] as number) * (1 - haze * (hazes[i] as number));
      let factor = neededFactor(total, clear, always, byAngle);
      if (factor > 1) continue;
      const cosine = cosineOf(view, i, sun);
      if (factor > 0 && cosine < cosineLimit(factor)) continue;
      const isDark = flankUnder(view, i, sun) === false;
      if (isDark && factor > 0) {
        factor /= darkFlankFactor;
        if (factor > 1 || cosine < cosineLimit(factor)) continue;
      }
      if ((range[i] as number) >= (range[best] as number)) {
        // At the same total the nearer one is the better. Factors are multiplied as in `totalAt`, so that rounding cannot make a
        // cap the less.
        const cap = isDark ? darkest : ceiling;
        const factors = hazeAt(view, i, altitude, sun.sky);
        if (cap * (reach[i] as number) * (aspect[i] as number) * (sight[i] as number) * factors <= total)
          continue;
      }
      const here = betterAt(view, i, sun, total, best);
      if (here < 0) continue;
      total = here;
      best = i;
    }
  }
  return best;
}

/** The cosine of the angle by which the light is classed, to a rounding; NaN where there is none. */
const cosineOf = (view: StillView, i: number, sun: SunThere): number =>
  view.fromBelow[i] === 1
    ? cosPhase(view, i, sun)
    : (view.backEast[i] as number) * sun.levelEast + (view.backNorth[i] as number) * sun.levelNorth;

/** The total of sample `i` where it is the better one, else -1. */
function betterAt(view: StillView, i: number, sun: SunThere, total: number, best: number): number {
  const here = totalAt(view, i, sun);
  const isNearer = (view.range[i] as number) < (view.range[best] as number);
  return here > total || (here === total && isNearer) ? here : -1;
}

/** Degrees by which the light is classed at sample `i`. */
const angleAt = (view: StillView, i: number, sun: SunThere): number => acosDeg(cosAngle(view, i, sun));

function cosAngle(view: StillView, i: number, sun: SunThere): number {
  if (view.fromBelow[i] === 1) return cosPhase(view, i, sun);
  const ground = view.ground[i] as number;
  const [e, n] = [view.east[i] as number, view.north[i] as number];
  return ground > 0 ? -(e * sun.levelEast + n * sun.levelNorth) / ground : 1;
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

/** Before sunrise the light is the same from everywhere. */
function lightAt(view: StillView, i: number, sun: SunThere): number {
  const altitude = sun.sun.geometricAltitude;
  return altitude < sunriseAltitude
    ? lightCeiling(altitude, sun.sky)
    : lightFactor(altitude, angleAt(view, i, sun), flankUnder(view, i, sun), sun.sky);
}

/** Total of the score of sample `i`, 0 to 1. */
export function totalAt(view: StillView, i: number, sun: SunThere): number {
  const reach = view.reach[i] as number;
  if (reach === 0) return 0;
  const altitude = sun.sun.geometricAltitude;
  return (
    lightAt(view, i, sun) *
    reach *
    (view.aspect[i] as number) *
    (view.sight[i] as number) *
    hazeAt(view, i, altitude, sun.sky)
  );
}

export function classUnder(view: StillView, i: number, sun: SunThere): LightClass {
  const altitude = sun.sun.geometricAltitude;
  return altitude < sunriseAltitude
    ? lightClass(altitude, NaN, null)
    : lightClass(altitude, angleAt(view, i, sun), flankUnder(view, i, sun));
}

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
    light: lightAt(view, i, sun),
    reach: view.reach[i] as number,
    aspect: view.aspect[i] as number,
    sight: view.sight[i] as number,
    haze: hazeAt(view, i, altitude, sun.sky),
  };
}
