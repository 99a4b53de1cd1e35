import { bridgedGap, dueWeight, shortestWindow, worthwhileFrom } from '../practice';
import type { LightClass, Score } from '../types';
import type { Position } from '../../survey/document';
import { positionOf, type Vec3 } from '../geometry/earth';
import { isFlat } from '../light/sky';
import { SunTrack } from '../light/sun-track';
import { bestUnder, classUnder, scoreUnder } from '../when/best-light';
import { dayStepMinutes, type DayRow } from '../when/day-rows';
import { lightCodes, readRow, type RowReading } from '../when/light-row';
import type { DueMovement } from '../movements/due-on';
import { actsWithin, isActOn, type ActDue, type Programme } from './acts-due';
import { weightAt } from './due';
import { isFlown, type FlowSpan } from './flow-spans';

/** What brings a window to its end, as far as it is one thing. */
export type WindowEnd =
  'sun-down' | 'overhead' | 'glare' | 'light' | 'haze' | 'flow' | 'programme' | 'hours' | 'day' | 'other';

/** A stretch of time in which a spot is worth standing at for one path. */
export interface PlanWindow {
  readonly row: DayRow;
  /** Instants, to five minutes. */
  readonly from: number;
  readonly to: number;
  /** What the survey's list expects on the path in this time. */
  readonly due: readonly DueMovement[];
  /** What a display's programme has in this time. */
  readonly acts: readonly ActDue[];
  /** Hours that are better than just worth the wait, each counted by how much, and more while something is due. */
  readonly worth: number;
  /** When it is best, and what the picture is then. */
  readonly peak: number;
  readonly best: RowReading;
  /** Means of the factors over the window. */
  readonly score: Score;
  /** The classes of light in it, longest first. */
  readonly lights: readonly LightClass[];
  /** No direct sun to speak of in most of it: alike from either side. */
  readonly flat: boolean;
  /** mm, shortest and longest that the best pictures need; null inside the aircraft. */
  readonly focal: { readonly shortest: number; readonly longest: number } | null;
  readonly ends: WindowEnd;
}

/** What is expected on one path: movements of the list, and the programme that it is flown by. */
export interface Expected {
  readonly due: readonly DueMovement[];
  readonly programme: Programme | null;
}

const stepMs = dayStepMinutes * 60_000;

/** Totals are held with seven figures: light from above is exactly at the threshold, and no better. */
const edge = 1e-6;

/** How much a total is better than just worth the wait, 0 to 1. */
const gainOf = (total: number): number =>
  total <= worthwhileFrom + edge ? 0 : (total - worthwhileFrom) / (1 - worthwhileFrom);

/**
 * What each step of a row is worth: nothing in glare, hidden, out of hours, or while the path is not flown; more while something is
 * due on it, and of a display with a programme only while an act is on.
 */
export function gains(
  { light, path, shut }: DayRow,
  from: number,
  spans: readonly FlowSpan[],
  { due, programme }: Expected,
): Float64Array {
  return Float64Array.from(light.total, (total, i) => {
    if (light.glare[i] === 1 || light.blocked[i] === 1 || shut?.[i] === 1) return 0;
    const gain = gainOf(total);
    const instant = from + (i + 0.5) * stepMs;
    if (gain === 0 || !isFlown(spans, path.ref, instant)) return 0;
    if (programme) return isActOn(programme, instant) ? gain * dueWeight : 0;
    return gain * weightAt(due, instant);
  });
}

/** First and last index (excluded) of each stretch that is worth standing at, short breaks bridged, short stretches left out. */
export function worthwhile(gain: Float64Array): (readonly [from: number, to: number])[] {
  const found: [number, number][] = [];
  for (let i = 0; i < gain.length; i++) {
    if (gain[i] === 0) continue;
    const last = found.at(-1);
    if (last && (i - last[1]) * dayStepMinutes <= bridgedGap) last[1] = i + 1;
    else found.push([i, i + 1]);
  }
  return found.filter(([a, b]) => (b - a) * dayStepMinutes >= shortestWindow);
}

/** The windows of a row. `from`: the day's first instant. */
export function windowsOf(
  row: DayRow,
  from: number,
  spans: readonly FlowSpan[],
  expected: Expected,
): PlanWindow[] {
  const gain = gains(row, from, spans, expected);
  return worthwhile(gain).map(([a, b]) => windowOf(row, gain, from, a, b, spans, expected));
}

/** A stretch of a row as a window, steps `a` to `b` (excluded) of the day. */
export function windowOf(
  row: DayRow,
  gain: Float64Array,
  from: number,
  a: number,
  b: number,
  spans: readonly FlowSpan[],
  { due, programme }: Expected,
): PlanWindow {
  const { view, spot, light } = row;
  const track = new SunTrack(spot.position, view.skyAt);
  const sum = { total: 0, light: 0, reach: 0, aspect: 0, sight: 0, haze: 0 };
  const lights = new Map<LightClass, number>();
  let flat = 0;
  let [best, peak, worth] = [view.closest, a, 0];
  let [shortest, longest] = [Infinity, 0];
  for (let i = a; i < b; i++) {
    const sun = track.at(from + (i + 0.5) * stepMs);
    best = bestUnder(view, sun, best);
    const score = scoreUnder(view, best, sun);
    for (const factor of Object.keys(sum) as (keyof typeof sum)[]) sum[factor] += score[factor] / (b - a);
    if (isFlat(sun.sky)) flat++;
    const name = classUnder(view, best, sun);
    lights.set(name, (lights.get(name) ?? 0) + 1);
    const focal = view.focal[best] as number;
    if (!Number.isNaN(focal)) [shortest, longest] = [Math.min(shortest, focal), Math.max(longest, focal)];
    worth += ((gain[i] as number) * dayStepMinutes) / 60;
    if ((light.total[i] as number) > (light.total[peak] as number)) peak = i;
  }
  const at = from + (peak + 0.5) * stepMs;
  return {
    row,
    from: from + a * stepMs,
    to: from + b * stepMs,
    due: due.filter(({ instant }) => instant >= from + a * stepMs && instant < from + b * stepMs),
    acts: programme
      ? actsWithin(programme, spot.position, placeOf(row, best), from + a * stepMs, from + b * stepMs)
      : [],
    worth,
    peak: at,
    best: readRow(view, spot.position, at),
    score: sum,
    flat: 2 * flat > b - a,
    lights: [...lights].sort((x, y) => y[1] - x[1]).map(([name]) => name),
    focal: longest > 0 ? { shortest, longest } : null,
    ends: endOf(row, from, b, spans, programme),
  };
}

/** Where the aircraft is at a sample of a row's path. */
const placeOf = ({ path: { samples } }: DayRow, i: number): Position =>
  positionOf(samples.centre.subarray(3 * i, 3 * i + 3) as unknown as Vec3);

/** What changes at the step after a window. */
function endOf(
  { light, view, spot, path, shut }: DayRow,
  from: number,
  after: number,
  spans: readonly FlowSpan[],
  programme: Programme | null,
): WindowEnd {
  if (after >= light.total.length) return 'day';
  if (shut?.[after] === 1) return 'hours';
  if (!isFlown(spans, path.ref, from + (after + 0.5) * stepMs)) return 'flow';
  if (programme && !isActOn(programme, from + (after + 0.5) * stepMs)) return 'programme';
  const name = lightCodes[light.light[after] as number];
  if (name === 'dark' || name === 'civil-twilight') return 'sun-down';
  if (name === 'top-lit') return 'overhead';
  if (light.glare[after] === 1) return 'glare';
  const [before, next] = [after - 1, after].map(
    (i) => readRow(view, spot.position, from + (i + 0.5) * stepMs).score,
  );
  if (!before || !next) return 'other';
  if (next.light < before.light - 0.005) return 'light';
  return next.haze < before.haze - 0.005 ? 'haze' : 'other';
}
