import { atAnyAngle, cosineLimit, neededFactor, perAdded } from './cosine-limits';
import { acosDeg, RAD } from './geometry/angles';
import { mistFactor } from './light/sky';
import type { SunThere } from './light/sun-there';
import { classAngleAt, cosClassAngleAt, flankLitAt } from './light-on-view';
import { farReach, reachedTo, type Reach } from './optics/reach';
import type { PathInView } from './path-in-view';
import { passAspect } from './practice';
import { darkCeiling, hazeByAltitude, hazeFactor, lightCeiling, lightFactor } from './score';
import type { StandingWorth } from './standing-worth';

/** The factors of a sample's score. */
export function scoreAt(worth: StandingWorth, i: number, sun: SunThere) {
  const { view } = worth;
  if (worth.known[i] !== 2) worth.knowAll(i);
  const altitude = sun.sun.geometricAltitude;
  const light = lightFactor(altitude, classAngleAt(view, i, sun), flankLitAt(view, i, sun), sun.sky);
  const reach = worth.reach[i] as number;
  const aspect = worth.aspect[i] as number;
  const haze = hazeFactor(worth.haze[i] as number, view.range[i] as number, altitude, sun.sky);
  const sight = view.sightAt(i);
  // An eye at the very centre of the aircraft has no angles: nothing that is out of reach needs them.
  const total = reach === 0 ? 0 : light * reach * aspect * sight * haze;
  return { total, light, reach, aspect, sight, haze };
}

/** The totals of `scoreAt` alone, of samples from one index on, into a list that the caller owns: numbers make no garbage. */
export function fillTotals(totals: number[], worth: StandingWorth, from: number, sun: SunThere): void {
  for (let k = 0; k < totals.length; k++) totals[k] = totalAt(worth, from + k, sun);
}

function totalAt(worth: StandingWorth, i: number, sun: SunThere): number {
  const { view } = worth;
  if (worth.known[i] !== 2) worth.knowAll(i);
  const reached = worth.reach[i] as number;
  if (reached === 0) return 0;
  const altitude = sun.sun.geometricAltitude;
  const light = lightFactor(altitude, classAngleAt(view, i, sun), flankLitAt(view, i, sun), sun.sky);
  const haze = hazeFactor(worth.haze[i] as number, view.range[i] as number, altitude, sun.sky);
  return light * reached * (worth.aspect[i] as number) * view.sightAt(i) * haze;
}

/**
 * The sample of the highest total; at equal totals (night) the least slant range. Never one that is hidden, as long as
 * anything of the path is in sight.
 */
export function bestIndex(worth: StandingWorth, sun: SunThere, reach: Reach): number {
  const { view } = worth;
  const closest = closestInSight(view);
  if (view.sightAt(closest) === 0 || lightCeiling(sun.sun.geometricAltitude, sun.sky) === 0) return closest;
  return bestAround(worth, sun, reach, closest, closest, 0, view.count - 1, anything);
}

const anything = () => true;

/**
 * The better one of sample `best` (-1 for none) and those from one index to another that count. Looked at from `start`
 * outwards: near the spot a sample soon scores so high that those farther off need no framing at all. Bounds first, the total last.
 */
function bestAround(
  worth: StandingWorth,
  sun: SunThere,
  reach: Reach,
  best: number,
  start: number,
  from: number,
  to: number,
  counts: (view: PathInView, i: number) => boolean,
): number {
  const { view, known } = worth;
  const { range, leastFocal } = view;
  const altitude = sun.sun.geometricAltitude;
  const ceiling = lightCeiling(altitude, sun.sky);
  const darkest = darkCeiling(altitude, sun.sky);
  const always = atAnyAngle(ceiling, darkest);
  const per = perAdded(ceiling, darkest);
  const hazy = hazeByAltitude(altitude, sun.sky);
  let total = best < 0 ? -1 : totalAt(worth, best, sun);
  const middle = Math.max(from, Math.min(to, start));
  const ahead = to - middle;
  let reachTo = reachedTo(reach, total / ceiling);
  for (let k = 0; k <= to - from; k++) {
    const i = k <= ahead ? middle + k : middle - (k - ahead);
    // No factor is above 1 and reach only falls beyond the longest lens: most samples need no framing at all.
    const least = leastFocal[i] as number;
    if (least > reachTo) continue;
    const sight = view.sightAt(i);
    if (sight === 0) continue;
    // How the sun stands to it costs less than how it is framed.
    const cosine = cosClassAngleAt(view, i, sun);
    let needed = neededFactor(total, farReach(reach, least) * sight, always, per);
    if (needed > 1 || (needed > 0 && cosine < cosineLimit(needed))) continue;
    if (known[i] === 0) worth.know(i);
    const reached = worth.reach[i] as number;
    needed = neededFactor(total, reached * sight, always, per);
    if (needed > 1 || (needed > 0 && cosine < cosineLimit(needed)) || !counts(view, i)) continue;
    if (known[i] !== 2) worth.knowAll(i);
    const aspect = worth.aspect[i] as number;
    const clear = 1 - (worth.haze[i] as number) * hazy;
    needed = neededFactor(total, reached * aspect * sight * clear, always, per);
    if (needed > 1 || (needed > 0 && cosine < cosineLimit(needed))) continue;
    // `totalAt`, factor by factor in the same order.
    let score = 0;
    if (reached > 0) {
      const light = lightFactor(altitude, acosDeg(cosine), flankLitAt(view, i, sun), sun.sky);
      score = light * reached * aspect * sight * (clear * mistFactor(range[i] as number, sun.sky));
    }
    if (score > total || (score === total && (range[i] as number) < (range[best] as number))) {
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
  worth: StandingWorth,
  sun: SunThere,
  reach: Reach,
  runs: readonly (readonly [from: number, to: number])[],
  best: number,
): number {
  const { view } = worth;
  const usable = runs.some(([from, to]) => best >= from && best <= to);
  if (usable && view.sightAt(best) > 0 && passesAt(view, best)) return best;
  let pass = -1;
  for (const [from, to] of runs) pass = bestAround(worth, sun, reach, pass, best, from, to, passesAt);
  return pass;
}

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
