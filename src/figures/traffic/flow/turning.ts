import type { EndRef } from '../../../survey/schema/site';
import { reportedDirection, type Wind } from '../wind/wind';
import { chooseFlow, type FlowChoice, type FlowRules } from './choose-flow';

/** The nearest change of the wind that puts other ends in use. */
export interface Turn {
  /** Degrees or kt, above 0. */
  readonly by: number;
  readonly arrivals: readonly EndRef[];
  readonly departures: readonly EndRef[];
}

/** How near the ends in use are to turning; null where nothing changes within half a turn, 60 kt more, or down to calm. */
export interface Turning {
  /** Degrees clockwise (the wind veers) and anticlockwise (it backs). */
  readonly veering: Turn | null;
  readonly backing: Turn | null;
  /** kt; gusts grow and shrink with the mean wind. */
  readonly stronger: Turn | null;
  readonly weaker: Turn | null;
}

const [degreeStep, knotStep, mostKnots] = [1, 0.5, 60];
/** Steps over which either end may do: 12 degrees at 5 kt. */
const mostBetween = 13;

/** Tries winds further and further away until other ends are in use: exact to a tenth of a degree or knot. */
export function turningOf(rules: FlowRules, wind: Wind, minuteOfDay: number): Turning {
  const now = chooseFlow(rules, wind, minuteOfDay);
  const search = (most: number, step: number, changed: (by: number) => Wind): Turn | null => {
    const at = (by: number) => chooseFlow(rules, changed(by), minuteOfDay);
    for (let by = step; by <= most + 1e-9; by += step) {
      if (sameEnds(at(by), now)) continue;
      let [same, other] = [by - step, by];
      while (other - same > 0.05) {
        const middle = (same + other) / 2;
        if (sameEnds(at(middle), now)) same = middle;
        else other = middle;
      }
      // On the way round either end will do for some degrees: what counts is what comes after.
      let beyond = at(other + step);
      for (let k = 2; beyond.either && k <= mostBetween; k++) beyond = at(other + k * step);
      const { arrivals, departures } = sameEnds(beyond, now) || beyond.either ? at(other) : beyond;
      return { by: other, arrivals, departures };
    }
    return null;
  };
  const { from, speedKt, gustKt } = wind;
  const faster = (by: number): Wind => ({
    ...wind,
    speedKt: Math.max(0, speedKt + by),
    gustKt: gustKt === null ? null : Math.max(0, gustKt + by),
  });
  const turned = (start: number) => (by: number) => ({ ...wind, from: reportedDirection(start + by) });
  return {
    veering: from === null ? null : search(180, degreeStep, turned(from)),
    backing: from === null ? null : search(180, degreeStep, (by) => turned(from)(-by)),
    stronger: from === null ? null : search(mostKnots, knotStep, faster),
    weaker: from === null ? null : search(speedKt, knotStep, (by) => faster(-by)),
  };
}

const sameList = (a: readonly EndRef[], b: readonly EndRef[]) =>
  a.length === b.length && a.every((e) => b.some((o) => o.runway === e.runway && o.end === e.end));

export const sameEnds = (
  a: Pick<FlowChoice, 'arrivals' | 'departures'>,
  b: Pick<FlowChoice, 'arrivals' | 'departures'>,
) => sameList(a.arrivals, b.arrivals) && sameList(a.departures, b.departures);
