import type { Position } from '../../survey/document';
import { SunTrack } from '../light/sun-track';
import type { LightClass, Score } from '../types';
import { bestUnder, classUnder, glareUnder, scoreUnder, totalAt } from './best-light';
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
  let best = view.closest;
  for (let i = from; i < to; i++) {
    const instant = instants[i] as number;
    if (Number.isNaN(instant)) continue;
    const sun = track.at(instant);
    best = bestUnder(view, sun, best);
    row.light[i] = codeOf[classUnder(view, best, sun)];
    row.glare[i] = glareUnder(view, best, sun) ? 1 : 0;
    row.blocked[i] = view.sight[best] === 0 ? 1 : 0;
    row.total[i] = totalAt(view, best, sun);
    row.best[i] = best;
  }
}

/** What is told of one entry of a row: the best picture at that instant. */
export interface RowReading {
  readonly light: LightClass;
  readonly glare: boolean;
  readonly score: Score;
  /** mm needed on the chosen body; null inside the aircraft. */
  readonly focalLength: number | null;
  /** m. */
  readonly slantRange: number;
}

export function readRow(view: StillView, position: Position, instant: number): RowReading {
  const sun = new SunTrack(position, view.skyAt).at(instant);
  const best = bestUnder(view, sun, view.closest);
  const focal = view.focal[best] as number;
  return {
    light: classUnder(view, best, sun),
    glare: glareUnder(view, best, sun),
    score: scoreUnder(view, best, sun),
    focalLength: Number.isNaN(focal) ? null : focal,
    slantRange: view.range[best] as number,
  };
}

/** Hours of perfect pictures that a row of even steps is worth: its totals, added up. */
export function worthOf({ total }: LightRow, stepMs: number): number {
  let sum = 0;
  for (const here of total) sum += here;
  return (sum * stepMs) / 3_600_000;
}

/** A stretch of a row over which light, glare and what is hidden stay as they are. */
export interface LightRun {
  /** Indices into the row, `to` excluded. */
  readonly from: number;
  readonly to: number;
  readonly light: LightClass;
  readonly glare: boolean;
  readonly blocked: boolean;
}

/** A part of a row cut into runs; what does not exist (`noLight`) is left out. */
export function lightRuns({ light, glare, blocked }: LightRow, from = 0, to = light.length): LightRun[] {
  const runs: LightRun[] = [];
  for (let i = from; i < to;) {
    let end = i + 1;
    while (end < to && light[end] === light[i] && glare[end] === glare[i] && blocked[end] === blocked[i])
      end++;
    const name = lightCodes[light[i] as number];
    if (name) runs.push({ from: i, to: end, light: name, glare: glare[i] === 1, blocked: blocked[i] === 1 });
    i = end;
  }
  return runs;
}
