import { RAD } from './geometry/angles';
import type { SunThere } from './light/sun-there';
import { aspectAt, classAngleAt, elevationAt, flankLitAt } from './light-on-view';
import { farReach, reachedTo, reachFactor, type Reach } from './optics/reach';
import type { PathInView } from './path-in-view';
import { passAspect } from './practice';
import { aspectFactor, hazeFactor, lightCeiling, lightFactor } from './score';

/** The factors of a sample's score. */
export function scoreAt(view: PathInView, i: number, sun: SunThere, reach: Reach) {
  const altitude = sun.sun.geometricAltitude;
  const light = lightFactor(altitude, classAngleAt(view, i, sun), flankLitAt(view, i, sun), sun.sky);
  const reached = reachOfSample(view, i, reach);
  const aspect = aspectFactor(aspectAt(view, i));
  const haze = hazeFactor(view.range[i] as number, altitude, elevationAt(view, i), sun.sky);
  const sight = view.sightAt(i);
  // An eye at the very centre of the aircraft has no angles: nothing that is out of reach needs them.
  const total = reached === 0 ? 0 : light * reached * aspect * sight * haze;
  return { total, light, reach: reached, aspect, sight, haze };
}

/** The total of `scoreAt` alone: a number makes no garbage. */
export function totalAt(view: PathInView, i: number, sun: SunThere, reach: Reach): number {
  const reached = reachOfSample(view, i, reach);
  if (reached === 0) return 0;
  const altitude = sun.sun.geometricAltitude;
  const light = lightFactor(altitude, classAngleAt(view, i, sun), flankLitAt(view, i, sun), sun.sky);
  const haze = hazeFactor(view.range[i] as number, altitude, elevationAt(view, i), sun.sky);
  return light * reached * aspectFactor(aspectAt(view, i)) * view.sightAt(i) * haze;
}

/**
 * The sample of the highest total; at equal totals (night) the least slant range. Never one that is hidden, as long as
 * anything of the path is in sight.
 */
export function bestIndex(view: PathInView, sun: SunThere, reach: Reach): number {
  const closest = closestInSight(view);
  if (view.sightAt(closest) === 0 || lightCeiling(sun.sun.geometricAltitude, sun.sky) === 0) return closest;
  return bestAround(view, sun, reach, closest, closest, 0, view.count - 1, anything);
}

const anything = () => true;

/**
 * The better one of sample `best` (-1 for none) and those from one index to another that count. Looked at from `start`
 * outwards: near the spot a sample soon scores so high that those farther off need no framing at all. Bounds first, the total last.
 */
function bestAround(
  view: PathInView,
  sun: SunThere,
  reach: Reach,
  best: number,
  start: number,
  from: number,
  to: number,
  counts: (view: PathInView, i: number) => boolean,
): number {
  const ceiling = lightCeiling(sun.sun.geometricAltitude, sun.sky);
  const { geometricAltitude: altitude } = sun.sun;
  let total = best < 0 ? -1 : totalAt(view, best, sun, reach);
  const middle = Math.max(from, Math.min(to, start));
  const ahead = to - middle;
  let reachTo = reachedTo(reach, total / ceiling);
  for (let k = 0; k <= to - from; k++) {
    const i = k <= ahead ? middle + k : middle - (k - ahead);
    // No factor is above 1 and reach only falls beyond the longest lens: most samples need no framing at all.
    if ((view.leastFocal[i] as number) > reachTo) continue;
    const sight = view.sightAt(i);
    if (sight === 0) continue;
    const far = farReach(reach, view.leastFocal[i] as number);
    // How the sun stands to it costs less than how it is framed.
    const angle = classAngleAt(view, i, sun);
    const lit = lightFactor(altitude, angle, null, sun.sky);
    if (lit * far < total) continue;
    const reached = reachOfSample(view, i, reach);
    if (lit * reached < total || !counts(view, i)) continue;
    // `totalAt`, factor by factor in the same order, left as soon as it cannot be the best.
    let score = 0;
    if (reached > 0) {
      score = lightFactor(altitude, angle, flankLitAt(view, i, sun), sun.sky) * reached;
      if (score < total) continue;
      score *= aspectFactor(aspectAt(view, i));
      score *= sight;
      if (score < total) continue;
      score *= hazeFactor(view.range[i] as number, altitude, elevationAt(view, i), sun.sky);
    }
    if (score > total || (score === total && (view.range[i] as number) < (view.range[best] as number))) {
      total = score;
      best = i;
      reachTo = reachedTo(reach, total / ceiling);
    }
  }
  return best;
}

const [cosPassTo, cosPassFrom] = [Math.cos(passAspect.to * RAD), Math.cos(passAspect.from * RAD)];

/** Whether the aircraft passes by at sample `i`: neither near nose-on nor from behind. An unknown heading is neither. */
const passesAt = (view: PathInView, i: number): boolean => {
  const cosine = view.cosAspectAt(i);
  return cosine >= cosPassTo - rounding && cosine <= cosPassFrom + rounding;
};
/** Of a cosine: a bound that is met holds. */
const rounding = 1e-12;

/**
 * The pass: the best usable sample in sight at which the aircraft is seen from its side or three-quarters from ahead;
 * -1 where there is none. `runs`: what of the path the kit can use. `best`: the best of all samples.
 */
export function passIndex(
  view: PathInView,
  sun: SunThere,
  reach: Reach,
  runs: readonly (readonly [from: number, to: number])[],
  best: number,
): number {
  const usable = runs.some(([from, to]) => best >= from && best <= to);
  if (usable && view.sightAt(best) > 0 && passesAt(view, best)) return best;
  let pass = -1;
  for (const [from, to] of runs) pass = bestAround(view, sun, reach, pass, best, from, to, passesAt);
  return pass;
}

const reachOfSample = (view: PathInView, i: number, reach: Reach): number => {
  const needed = view.focalAt(i);
  return Number.isNaN(needed) ? 0 : reachFactor(reach, needed);
};

/** The sample nearest to the eye. */
export function closestIndex(view: PathInView): number {
  let closest = 0;
  for (let i = 1; i < view.count; i++)
    if ((view.range[i] as number) < (view.range[closest] as number)) closest = i;
  return closest;
}

/** The same among those in sight; the nearest of all when nothing is. */
export function closestInSight(view: PathInView): number {
  let closest = -1;
  for (let i = 0; i < view.count; i++)
    if (view.sightAt(i) > 0 && (closest < 0 || (view.range[i] as number) < (view.range[closest] as number)))
      closest = i;
  return closest < 0 ? closestIndex(view) : closest;
}
