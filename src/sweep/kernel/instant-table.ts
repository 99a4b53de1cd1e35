import { frameAt, type Frame } from '../../figures/geometry/earth';
import type { SkyAt } from '../../figures/light/sky';
import { clearCeiling, hazeByAltitude, lightCeiling } from '../../figures/score';
import type { Path } from '../../figures/traffic/paths';
import type { Position } from '../../survey/document';
import { darkFlanks } from './dark-flanks';
import { lightLimits, limitSteps } from './light-limits';
import { SunOver, type MovingSun } from './sun-over';

/**
 * What `at` holds of each instant: the sun's direction, the most that light can be there and one divided by it, the same under a
 * clear sky, and the sun's part in the haze.
 */
export const atEast = 0;
export const atNorth = 1;
export const atUp = 2;
export const atLevelEast = 3;
export const atLevelNorth = 4;
export const atAltitude = 5;
export const atCeiling = 6;
export const atPerCeiling = 7;
export const atClearCeiling = 8;
export const atHaze = 9;
export const atEach = 10;

/** Limits of one instant in `limits`. */
const limitsEach = limitSteps + 1;

/** The light of every instant, worked out once a place and not once a sample. */
export class InstantTable {
  readonly count: number;
  /** Ten numbers an instant, so that the innermost loop touches one stretch of memory: see `at*`. */
  readonly at: Float64Array;
  /** Two tables an instant (`lightLimits`): with the flank dark from `count x limitsEach` on. */
  readonly limits: Float64Array;
  /** Where the table of each instant begins in `limits`: pieces x sides x instants (`rowOf`), path by path. */
  readonly tables: readonly Int32Array[];
  /** The instants that are asked about: the first `askedCount`. */
  readonly asked: Int32Array;
  askedCount = 0;
  readonly #over: SunOver;

  constructor(middle: Position, instants: readonly number[], skyAt: SkyAt, paths: readonly Path[]) {
    const count = instants.length;
    this.count = count;
    this.at = new Float64Array(count * atEach);
    this.asked = new Int32Array(count);
    this.#over = new SunOver(middle, instants, instants.map(skyAt));
    this.#over.at(frameAt(middle));
    this.limits = new Float64Array(2 * count * limitsEach);
    this.suns.forEach(({ sun, sky }, t) => {
      this.limits.set(lightLimits(sun.geometricAltitude, sky), t * limitsEach);
      this.limits.set(lightLimits(sun.geometricAltitude, sky, false), (count + t) * limitsEach);
    });
    this.tables = paths.map(({ samples }) =>
      Int32Array.from(
        darkFlanks(samples, this.#over),
        (dark, k) => (dark * count + (k % count)) * limitsEach,
      ),
    );
  }

  /** The suns at the place that was asked for last, one an instant, and its frame. */
  get suns(): readonly MovingSun[] {
    return this.#over.suns;
  }

  get frame(): Frame {
    return this.#over.frame;
  }

  move(frame: Frame): void {
    this.#over.at(frame);
    const { suns } = this.#over;
    const at = this.at;
    for (let t = 0, k = 0; t < suns.length; t++, k += atEach) {
      const { sun, east, north, up, levelEast, levelNorth, sky } = suns[t] as MovingSun;
      at[k + atEast] = east;
      at[k + atNorth] = north;
      at[k + atUp] = up;
      at[k + atLevelEast] = levelEast;
      at[k + atLevelNorth] = levelNorth;
      at[k + atAltitude] = sun.geometricAltitude;
      const ceiling = lightCeiling(sun.geometricAltitude, sky);
      at[k + atCeiling] = ceiling;
      at[k + atPerCeiling] = 1 / ceiling;
      at[k + atClearCeiling] = clearCeiling(sun.geometricAltitude);
      at[k + atHaze] = hazeByAltitude(sun.geometricAltitude, sky);
    }
  }

  /** Asks about those of some instants at which there is any light. */
  ask(instants: readonly number[]): void {
    this.askedCount = 0;
    for (let k = 0; k < instants.length; k++) {
      const t = instants[k] as number;
      if ((this.at[t * atEach + atCeiling] as number) > 0) this.asked[this.askedCount++] = t;
    }
  }
}
