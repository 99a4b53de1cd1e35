import type { Position } from '../../survey/document';
import type { Stretch } from '../light/stretches';
import { SunTrack } from '../light/sun-track';
import type { LightClass } from '../types';
import { bestUnder, classUnder } from './best-light';
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
 * The light on a path's best sample through the time between two instants, in stretches without a gap, night
 * included. The best sample is that of each instant: it moves along the path with the sun, and where two parts of the
 * path are almost equally good it may jump to and fro. Each stretch begins at the first whole second (counted from
 * `from`) that has its light.
 */
export function lightStretches(
  view: StillView,
  position: Position,
  from: number,
  to: number,
): Stretch<LightClass>[] {
  const track = new SunTrack(position, view.skyAt);
  let guess = view.closest;
  const look = (instant: number): Look => {
    const sun = track.at(instant);
    guess = bestUnder(view, sun, guess);
    return { instant, best: guess, light: classUnder(view, guess, sun) };
  };
  const out: Stretch<LightClass>[] = [];
  let begun = look(from);
  const search = (a: Look, b: Look): void => {
    if (a.light === b.light && a.best === b.best) return;
    if (b.instant - a.instant > second) {
      const middle = look(a.instant + Math.ceil((b.instant - a.instant) / 2 / second) * second);
      search(a, middle);
      search(middle, b);
    } else if (a.light !== b.light) {
      out.push({ from: begun.instant, to: b.instant, value: begun.light });
      begun = b;
    }
  };
  let before = begun;
  for (let t = from + step; before.instant < to - second; t += step) {
    const after = look(Math.min(t, to - second));
    search(before, after);
    before = after;
  }
  return [...out, { from: begun.instant, to, value: begun.light }];
}
