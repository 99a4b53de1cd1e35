import { acosDeg } from '../geometry/angles';
import { atAnyAngle, cosineLimit, neededFactor, perAdded } from '../cosine-limits';
import { angleOfClass, lightClass } from '../light/light-class';
import { isFlat, type SkyThere } from '../light/sky';
import { glaresInto } from '../glare-on-view';
import { sunriseAltitude } from '../light/sun';
import type { SunThere } from '../light/sun-there';
import { darkFlankFactor, litFrom } from '../practice';
import { darkCeiling, hazeByAltitude, hazeFactor, lightCeiling, lightFactor } from '../score';
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
 * beat the best so far are passed over. `guess`: a sample that may be it, the last answer under a sun nearby. `told`: takes its
 * total, for whoever asks for both.
 */
export function bestUnder(view: StillView, sun: SunThere, guess: number, told?: Float64Array): number {
  const altitude = sun.sun.geometricAltitude;
  const ceiling = lightCeiling(altitude, sun.sky);
  const { closest, range, reach, aspect, sight, most: mostOf, haze: hazes, blocks } = view;
  const { east, north, up, backEast, backNorth, fromBelow, hasFlank, flankEast, flankNorth, flankUp } = view;
  const { east: sunEast, north: sunNorth, up: sunUp, levelEast, levelNorth } = sun;
  // What is hidden is never the best as long as anything is in sight.
  if (ceiling === 0 || sight[closest] === 0) {
    if (told) told[0] = totalAt(view, closest, sun);
    return closest;
  }
  let best = sight[guess] === 0 ? closest : guess;
  let total = totalAt(view, best, sun);
  const haze = hazeByAltitude(altitude, sun.sky);
  const bound = ceiling * slack;
  const darkest = darkCeiling(altitude, sun.sky);
  const always = atAnyAngle(ceiling, darkest);
  const per = perAdded(ceiling, darkest);
  for (let o = 0; o < blocks.length; o += blockEach) {
    const greatest = blocks[o + blockMost] as number;
    if (greatest * bound < total) break;
    const room = greatest * (1 - haze * (blocks[o + blockHaze] as number));
    const toSun =
      (blocks[o + blockFlankEast] as number) * sunEast +
      (blocks[o + blockFlankNorth] as number) * sunNorth +
      (blocks[o + blockFlankUp] as number) * sunUp +
      (blocks[o + blockFlankSpread] as number);
    let needed = neededFactor(total, room, always, per);
    if (toSun < litFrom) needed /= darkFlankFactor;
    if (needed > 1) continue;
    if (needed > 0) {
      const cosine =
        (blocks[o + blockEast] as number) * levelEast + (blocks[o + blockNorth] as number) * levelNorth;
      const cosSpread = blocks[o + blockCosSpread] as number;
      if (cosine < cosSpread) {
        const sine = Math.sqrt(1 - cosine * cosine);
        if (cosine * cosSpread + sine * (blocks[o + blockSinSpread] as number) < cosineLimit(needed))
          continue;
      }
    }
    // Whole numbers again: an index that is a double costs at every access.
    const to = (blocks[o + blockTo] as number) | 0;
    for (let i = (blocks[o + blockFrom] as number) | 0; i < to; i++) {
      if (sight[i] === 0) continue;
      // What is cheap to know first: most samples need no flank, and most of the others no angle.
      const clear = (mostOf[i] as number) * (1 - haze * (hazes[i] as number));
      let factor = neededFactor(total, clear, always, per);
      if (factor > 1) continue;
      // To a rounding; NaN where there is none. Written out: handed back by a function it would make garbage.
      const cosine =
        fromBelow[i] === 1
          ? -((east[i] as number) * sunEast + (north[i] as number) * sunNorth + (up[i] as number) * sunUp) /
            (range[i] as number)
          : (backEast[i] as number) * levelEast + (backNorth[i] as number) * levelNorth;
      if (factor > 0 && cosine < cosineLimit(factor)) continue;
      const isDark =
        hasFlank[i] === 1 &&
        !(
          (flankEast[i] as number) * sunEast +
            (flankNorth[i] as number) * sunNorth +
            (flankUp[i] as number) * sunUp >
          litFrom
        );
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
      const here = totalAt(view, i, sun);
      if (here > total || (here === total && (range[i] as number) < (range[best] as number))) {
        total = here;
        best = i;
      }
    }
  }
  if (told) told[0] = total;
  return best;
}

/** Degrees by which the light is classed at sample `i`. */
const angleAt = (view: StillView, i: number, sun: SunThere): number => acosDeg(cosAngle(view, i, sun));

function cosAngle(view: StillView, i: number, sun: SunThere): number {
  if (view.fromBelow[i] === 1) return cosPhase(view, i, sun);
  const ground = view.ground[i] as number;
  const across = (view.east[i] as number) * sun.levelEast + (view.north[i] as number) * sun.levelNorth;
  return ground > 0 ? -across / ground : 1;
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
  hazeFactor(view.haze[i] as number, view.range[i] as number, altitude, sky);

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
    : lightClass(altitude, angleOfClass(cosAngle(view, i, sun)), flankUnder(view, i, sun));
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
