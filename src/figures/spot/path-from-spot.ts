import { bestIndex, fillTotals, passIndex } from '../best-in-view';
import { glareAt } from '../glare-on-view';
import type { SunThere } from '../light/sun-there';
import { lightAngleAt } from '../light-on-view';
import type { Outlook } from '../outlook';
import type { InTheWay } from '../sight/hidden';
import type { StandingWorth } from '../standing-worth';
import type { Path } from '../traffic/paths';
import type { PathFromSpot, SectorRun } from '../types';
import type { EyeThere } from './eye-at';
import type { PartInSight } from './part-in-sight';
import { sampleAt } from './sample-at';

/** A path as the view shows it now, under one sun. `part`: what of it the kit can use. */
export function pathFromSpot(
  worth: StandingWorth,
  path: Path,
  closest: number,
  { runs, inSight, usable, visibleShare, through }: PartInSight,
  way: InTheWay,
  sun: SunThere,
  eye: EyeThere,
  outlook: Outlook,
): PathFromSpot {
  const { view } = worth;
  const { share } = path.samples;
  let glaring = 0;
  const sector = inSight.map(({ from, bearings, focalLengths }): SectorRun => {
    const count = bearings.length;
    const lightAngles = new Array<number>(count);
    const glare = new Array<boolean>(count);
    const totals = new Array<number>(count);
    for (let k = 0; k < count; k++) {
      const i = from + k;
      const glares = glareAt(view, i, sun, outlook.framing, outlook.reach);
      if (glares) glaring += share[i] as number;
      lightAngles[k] = lightAngleAt(view, i, sun);
      glare[k] = glares;
    }
    fillTotals(totals, worth, from, sun);
    return { from, bearings, lightAngles, glare, focalLengths, totals };
  });
  const best = bestIndex(worth, sun, outlook.reach);
  const pass = passIndex(worth, sun, outlook.reach, runs, best);
  const sample = (i: number) => sampleAt(worth, path, i, sun, way, eye, outlook);
  const bestSample = sample(best);
  return {
    ref: path.ref,
    closest: sample(closest),
    best: bestSample,
    pass: pass < 0 ? null : pass === best ? bestSample : sample(pass),
    visibleShare,
    glareShare: usable > 0 ? glaring / usable : null,
    hidden: way.stretches,
    through,
    sector: { runs: sector },
  };
}
