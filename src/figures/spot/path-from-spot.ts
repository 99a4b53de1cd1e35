import { bestIndex, passIndex, scoreAt } from '../best-in-view';
import { glareAt } from '../glare-on-view';
import type { SunThere } from '../light/sun-there';
import { lightAngleAt } from '../light-on-view';
import type { Outlook } from '../outlook';
import type { PathInView } from '../path-in-view';
import type { InTheWay } from '../sight/hidden';
import type { Path } from '../traffic/paths';
import type { PathFromSpot, Sector } from '../types';
import type { EyeThere } from './eye-at';
import { bearingAt, sampleAt } from './sample-at';
import type { Runs } from './usable-runs';

/** A path as `view` shows it now, under one sun. `runs`: what of it the kit can use. */
export function pathFromSpot(
  view: PathInView,
  path: Path,
  closest: number,
  runs: Runs,
  way: InTheWay,
  sun: SunThere,
  eye: EyeThere,
  outlook: Outlook,
): PathFromSpot {
  const { share } = path.samples;
  let usable = 0;
  let visible = 0;
  let glaring = 0;
  const through = new Set<string>();
  const sector: ReturnType<typeof emptyRun>[] = [];
  for (const [from, to] of runs) {
    let run: ReturnType<typeof emptyRun> | null = null;
    for (let i = from; i <= to; i++) {
      const inSight = view.sightAt(i);
      usable += share[i] as number;
      if (inSight === 0) {
        run = null;
        continue;
      }
      if (!run) sector.push((run = emptyRun(i)));
      const glare = glareAt(view, i, sun, outlook.framing, outlook.reach);
      visible += inSight * (share[i] as number);
      if (glare) glaring += share[i] as number;
      run.bearings.push(bearingAt(view, i));
      run.lightAngles.push(lightAngleAt(view, i, sun));
      run.glare.push(glare);
      run.focalLengths.push(view.focalAt(i));
      run.totals.push(scoreAt(view, i, sun, outlook.reach).total);
      const mesh = way.throughAt(i);
      if (mesh !== null) through.add(mesh);
    }
  }
  const best = bestIndex(view, sun, outlook.reach);
  const pass = passIndex(view, sun, outlook.reach, runs, best);
  const sample = (i: number) => sampleAt(view, path, i, sun, way, eye, outlook);
  const bestSample = sample(best);
  return {
    ref: path.ref,
    closest: sample(closest),
    best: bestSample,
    pass: pass < 0 ? null : pass === best ? bestSample : sample(pass),
    visibleShare: usable > 0 ? visible / usable : null,
    glareShare: usable > 0 ? glaring / usable : null,
    hidden: way.stretches,
    through: [...through],
    sector: { runs: sector } satisfies Sector,
  };
}

const emptyRun = (from: number) => ({
  from,
  bearings: [] as number[],
  lightAngles: [] as number[],
  glare: [] as boolean[],
  focalLengths: [] as number[],
  totals: [] as number[],
});
