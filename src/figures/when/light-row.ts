import type { Position } from '../../survey/document';
import { isFlat } from '../light/sky';
import { civilTwilightAltitude } from '../light/sun';
import { SunTrack } from '../light/sun-track';
import type { LightClass, Score } from '../types';
import { scoreWord, type ScoreWord } from '../score-words';
import { bestUnder, classUnder, glareUnder, scoreUnder } from './best-light';
import type { StillView } from './still-view';

/** Light classes by the number under which rows hold them. */
export const lightCodes = [
  'dark',
  'civil-twilight',
  'top-lit',
  'front-lit',
  'side-lit',
  'back-lit',
] as const satisfies readonly LightClass[];
const codeOf = Object.fromEntries(lightCodes.map((light, i) => [light, i])) as Record<LightClass, number>;
/** No light to tell: an hour that the clocks skip. */
export const noLight = 255;

/** The light on a path's best sample at each of many instants. */
export interface LightRow {
  /** Index into `lightCodes`, or `noLight`. */
  readonly light: Uint8Array;
  /** 1 where the sun shines into the lens. */
  readonly glare: Uint8Array;
  /** 1 under a sky without direct sun to speak of. */
  readonly flat: Uint8Array;
  /** 1 where the best sample is wholly hidden: then nothing of the path that is worth a picture is in sight. */
  readonly blocked: Uint8Array;
  /** Total of the score, 0 to 1. */
  readonly total: Float32Array;
  /** Index of the best sample. */
  readonly best: Uint32Array;
}

/** A row in which nothing is told yet. */
export const emptyRow = (count: number): LightRow => ({
  light: new Uint8Array(count).fill(noLight),
  glare: new Uint8Array(count),
  flat: new Uint8Array(count),
  blocked: new Uint8Array(count),
  total: new Float32Array(count),
  best: new Uint32Array(count),
});

/** `instants`: ms since 1970, in order; NaN for one that does not exist. */
export function lightRow(view: StillView, position: Position, instants: Float64Array): LightRow {
  const row = emptyRow(instants.length);
  fillRow(row, view, position, instants, 0, instants.length);
  return row;
}

/** Fills in the entries of a row from one index to another (excluded). The caller owns the row. */
export function fillRow(
  row: LightRow,
  view: StillView,
  position: Position,
  instants: Float64Array,
  from: number,
  to: number,
): void {
  const track = new SunTrack(position, view.skyAt);
  const total = new Float64Array(1);
  let best = view.closest;
  let darkTo = -Infinity;
  for (let i = from; i < to; i++) {
    const instant = instants[i] as number;
    if (Number.isNaN(instant)) continue;
    if (instant < darkTo) {
      tellDark(row, view, i, instant);
      continue;
    }
    const sun = track.at(instant);
    const altitude = sun.sun.geometricAltitude;
    if (altitude < civilTwilightAltitude)
      darkTo = instant + (civilTwilightAltitude - altitude) * leastMsADegree;
    best = bestUnder(view, sun, best, total);
    row.light[i] = codeOf[classUnder(view, best, sun)];
    row.glare[i] = glareUnder(view, best, sun) ? 1 : 0;
    row.flat[i] = isFlat(sun.sky) ? 1 : 0;
    row.blocked[i] = view.sight[best] === 0 ? 1 : 0;
    row.total[i] = total[0] as number;
    row.best[i] = best;
  }
}

/** ms in which the sun rises by a degree at the soonest: with the earth's turn at the equator, and its declination's 0.4 degrees a day. */
const leastMsADegree = 3_600_000 / 15.1;

/** The entry of an instant at which it is as dark as `bestUnder` and the others find it before civil dawn. */
function tellDark(row: LightRow, view: StillView, i: number, instant: number): void {
  row.light[i] = codeOf.dark;
  row.flat[i] = isFlat(view.skyAt(instant)) ? 1 : 0;
  row.blocked[i] = view.sight[view.closest] === 0 ? 1 : 0;
  row.best[i] = view.closest;
}

/** What is told of one entry of a row: the best picture at that instant. */
export interface RowReading {
  readonly light: LightClass;
  /** Under a sky without direct sun to speak of: alike from either side. */
  readonly flat: boolean;
  readonly glare: boolean;
  readonly score: Score;
  /** mm needed on the chosen body; null inside the aircraft. */
  readonly focalLength: number | null;
  /** m. */
  readonly slantRange: number;
  /** Which sample of the path it is. */
  readonly sample: number;
}

export function readRow(view: StillView, position: Position, instant: number): RowReading {
  const sun = new SunTrack(position, view.skyAt).at(instant);
  const best = bestUnder(view, sun, view.closest);
  const focal = view.focal[best] as number;
  return {
    light: classUnder(view, best, sun),
    flat: isFlat(sun.sky),
    glare: glareUnder(view, best, sun),
    score: scoreUnder(view, best, sun),
    focalLength: Number.isNaN(focal) ? null : focal,
    slantRange: view.range[best] as number,
    sample: best,
  };
}

/** Hours of perfect pictures that a row of even steps is worth: its totals, added up. */
export function worthOf({ total }: LightRow, stepMs: number): number {
  let sum = 0;
  for (const here of total) sum += here;
  return (sum * stepMs) / 3_600_000;
}

/** A stretch of a row over which light, glare, sky, worth and what is hidden stay as they are. */
export interface LightRun {
  /** Indices into the row, `to` excluded. */
  readonly from: number;
  readonly to: number;
  readonly light: LightClass;
  readonly glare: boolean;
  readonly flat: boolean;
  readonly blocked: boolean;
  readonly worth: ScoreWord;
}

/** What is to be said of one entry of a row. */
export type LightEntry = Omit<LightRun, 'from' | 'to'>;

/** The entry at an index; null where it does not exist (`noLight`). */
export function entryOf(row: LightRow, i: number): LightEntry | null {
  const light = lightCodes[row.light[i] as number];
  if (!light) return null;
  return {
    light,
    glare: row.glare[i] === 1,
    flat: row.flat[i] === 1,
    blocked: row.blocked[i] === 1,
    worth: scoreWord(row.total[i] as number),
  };
}

/** A part of a row cut into runs; what does not exist is left out. */
export function lightRuns(row: LightRow, from = 0, to = row.light.length): LightRun[] {
  const { light, glare, flat, blocked, total } = row;
  const isSame = (i: number, k: number) =>
    light[i] === light[k] &&
    glare[i] === glare[k] &&
    flat[i] === flat[k] &&
    blocked[i] === blocked[k] &&
    scoreWord(total[i] as number) === scoreWord(total[k] as number);
  const runs: LightRun[] = [];
  for (let i = from; i < to;) {
    let end = i + 1;
    while (end < to && isSame(i, end)) end++;
    const entry = entryOf(row, i);
    if (entry) runs.push({ from: i, to: end, ...entry });
    i = end;
  }
  return runs;
}
