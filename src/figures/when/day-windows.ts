import type { Position } from '../../survey/document';
import type { Stretch } from '../light/stretches';
import { SunTrack } from '../light/sun-track';
import type { LightClass } from '../types';
import { staysWithin } from '../practice';
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
 * the best. Each stretch begins at the first whole second (counted from `from`) that has its light.
 */
export function lightStretches(
  view: StillView,
  position: Position,
  from: number,
  to: number,
): Stretch<LightClass>[] {
  const track = new SunTrack(position, view.skyAt);
  const look = (instant: number, kept: number): Look => {
    const sun = track.at(instant);
    const best = bestUnder(view, sun, kept);
    const stays =
      best === kept ||
      (view.sight[kept] !== 0 && totalAt(view, kept, sun) >= totalAt(view, best, sun) - staysWithin);
    const sample = stays ? kept : best;
    return { instant, best: sample, light: classUnder(view, sample, sun) };
  };
  const out: Stretch<LightClass>[] = [];
  const first = track.at(from);
  const start = bestUnder(view, first, view.closest);
  let begun: Look = { instant: from, best: start, light: classUnder(view, start, first) };
  /** Goes on to an instant, with a stretch for every change on the way. */
  const goTo = (instant: number, before: Look): Look => {
    const after = look(instant, before.best);
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
