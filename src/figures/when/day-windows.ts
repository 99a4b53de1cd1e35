import type { Position } from '../../survey/document';
import type { Stretch } from '../light/stretches';
import { SunTrack } from '../light/sun-track';
import type { LightClass } from '../types';
import { staysWithin } from '../practice';
import { lightCeiling, slack } from '../score';
import type { SunThere } from '../light/sun-there';
import { bestUnder, classUnder, totalAt } from './best-light';
import type { StillView } from './still-view';

const second = 1000;
/** ms between looks while the best sample stays the same one: far less than any light lasts then. */
const step = 64 * second;

interface Look {
  readonly instant: number;
  readonly best: number;
  readonly light: LightClass;
}

/**
 * The light on a path's best sample through the time between two instants, in stretches without a gap, night included.
 * The best sample moves along the path with the sun. Where two parts of the path are almost equally good it would jump to
 * and fro for minutes: whoever waits for one stays with it, so a sample is kept while its total is within `staysWithin` of
 * the best. A sample at the border of two lights drifts over it with the sun, where the next one is found on the side that was
 * left: so the light is kept too, while a sample that is as good has it. Each stretch begins at the first whole second (counted from `from`) that has its light.
 */
export function lightStretches(
  view: StillView,
  position: Position,
  from: number,
  to: number,
): Stretch<LightClass>[] {
  const track = new SunTrack(position, view.skyAt);
  const look = (instant: number, { best: kept, light: lightKept }: Look): Look => {
    const sun = track.at(instant);
    const best = bestUnder(view, sun, kept);
    const total = totalAt(view, best, sun);
    const stays =
      best === kept || (view.sight[kept] !== 0 && totalAt(view, kept, sun) >= total - staysWithin);
    const sample = stays ? kept : best;
    const light = classUnder(view, sample, sun);
    if (light === lightKept || total === 0) return { instant, best: sample, light };
    const other = bestOfLight(view, sun, lightKept, total * (1 - staysWithin));
    return other === null ? { instant, best: sample, light } : { instant, best: other, light: lightKept };
  };
  const out: Stretch<LightClass>[] = [];
  const first = track.at(from);
  const start = bestUnder(view, first, view.closest);
  let begun: Look = { instant: from, best: start, light: classUnder(view, start, first) };
  /** Goes on to an instant, with a stretch for every change on the way. */
  const goTo = (instant: number, before: Look): Look => {
    const after = look(instant, before);
    if (before.light === after.light && before.best === after.best) return after;
    if (instant - before.instant > second) {
      const middle = before.instant + Math.ceil((instant - before.instant) / 2 / second) * second;
      return goTo(instant, goTo(middle, before));
    }
    if (before.light !== after.light) {
      out.push({ from: begun.instant, to: instant, value: begun.light });
      begun = after;
    }
    return after;
  };
  let at = begun;
  for (let t = from + step; at.instant < to - second; t += step) at = goTo(Math.min(t, to - second), at);
  return [...out, { from: begun.instant, to, value: begun.light }];
}

/** The best sample in sight that has a light and at least a total; null where none has. */
function bestOfLight(view: StillView, sun: SunThere, light: LightClass, least: number): number | null {
  let [best, most]: [number | null, number] = [null, least];
  const ceiling = slack * lightCeiling(sun.sun.geometricAltitude, sun.sky);
  for (let i = 0; i < view.count; i++) {
    if (view.sight[i] === 0 || (view.most[i] as number) * ceiling < most) continue;
    const total = totalAt(view, i, sun);
    if (total < most || classUnder(view, i, sun) !== light) continue;
    best = i;
    most = total;
  }
  return best;
}
