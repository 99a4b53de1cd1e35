import { acosAtLeastDeg, acosDeg } from '../geometry/angles';
import { lightClass } from '../light/light-class';
import { isFlat, mistFactor, type SkyThere } from '../light/sky';
import { glaresInto } from '../glare-on-view';
import { sunriseAltitude } from '../light/sun';
import type { SunThere } from '../light/sun-there';
import { darkFlankFactor, litFrom } from '../practice';
import { angleFactor, darkCeiling, hazeByAltitude, lightCeiling, lightFactor } from '../score';
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
  const { range, reach, aspect, sight, most: mostOf, blocks } = view;
  let total = totalAt(view, best, sun);
  // What is hidden is never the best as long as anything is in sight.
  if (sight[best] === 0) return best;
  let here = betterAt(view, guess, sun, total, best);
  if (here >= 0) {
    [total, best] = [here, guess];
    // The sun goes on a little, and the best sample with it.
    for (const step of [1, -1])
      while ((here = betterAt(view, best + step, sun, total, best)) >= 0) {
        total = here;
        best += step;
      }
  }
  const haze = hazeByAltitude(altitude, sun.sky);
  const bound = ceiling * slack;
  const darkest = darkCeiling(altitude, sun.sky);
  // Light by the angle is a straight line of its factor: what cloud gives is there at any angle, as all is before sunrise.
  const byAngle = ((ceiling - darkest) / (1 - darkFlankFactor)) * slack;
  const always = bound - byAngle;
  for (const block of blocks) {
    if (block.most * bound < total) break;
    const { most: greatest, east, north, spread, level, flankEast, flankNorth, flankUp, flankSpread } = block;
    const least = level ? acosAtLeastDeg(sun.levelEast * east + sun.levelNorth * north) - spread : 0;
    const toSun = flankEast * sun.east + flankNorth * sun.north + flankUp * sun.up + flankSpread;
    const most = greatest * (1 - haze * block.haze);
    if (most * (always + byAngle * angleFactor(least) * (toSun < litFrom ? darkFlankFactor : 1)) < total)
      continue;
    for (let i = block.from; i < block.to; i++) {
      if (sight[i] === 0) continue;
      // What is cheap to know first: most samples need no angle, and most of the others no exact one. Factors are
      // multiplied as in `totalAt`, so that rounding cannot make a cap the less.
      const factors = hazeAt(view, i, altitude, sun.sky);
      const farther = (range[i] as number) >= (range[best] as number);
      let cap = ceiling * (reach[i] as number) * (aspect[i] as number) * (sight[i] as number) * factors;
      if (cap < total || (farther && cap === total)) continue;
      const isDark = flankUnder(view, i, sun) === false;
      if (isDark) {
        cap = darkest * (reach[i] as number) * (aspect[i] as number) * (sight[i] as number) * factors;
        if (cap < total || (farther && cap === total)) continue;
      }
      const angle = angleFactor(acosAtLeastDeg(cosAngle(view, i, sun))) * (isDark ? darkFlankFactor : 1);
      if ((mostOf[i] as number) * factors * (always + byAngle * angle) < total) continue;
      here = betterAt(view, i, sun, total, best);
      if (here < 0) continue;
      total = here;
      best = i;
    }
  }
  return best;
}

/** The total of sample `i` where it is the better one, else -1. */
function betterAt(view: StillView, i: number, sun: SunThere, total: number, best: number): number {
  if (i < 0 || i >= view.count || view.sight[i] === 0) return -1;
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
