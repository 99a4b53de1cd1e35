import { wrap180 } from '../../figures/geometry/angles';
import { civilTwilightAltitude, sunriseAltitude } from '../../figures/light/sun';
import { isFlat } from '../../figures/light/sky';
import { scoreWord } from '../../figures/score-words';
import type { SectorRun, SpotFigures } from '../../figures/types';
import { darkColour, faded, flatColour, lightColour, twilightColour } from '../../../styles/ramps';

/** A stretch of bearings of one look. `edges`: degrees from true north, at most 5 apart, running on past 360 or below 0. */
export interface Wedge {
  readonly edges: readonly number[];
  readonly colour: string;
  readonly glare: boolean;
}

/** A part of a view sector that sweeps one way without a gap, with the wedges of both moments. */
export interface Sweep {
  /** All bearings of the sweep. */
  readonly edges: readonly number[];
  readonly a: readonly Wedge[];
  readonly b: readonly Wedge[];
  /** mm, the least that it needs: what is nearer is drawn over what is farther away. */
  readonly focalLength: number;
}

/** Degrees between the corners of an arc. */
const finest = 5;
/** Degrees: an aircraft that passes overhead jumps to the other side; there is no view in between. */
const jump = 120;
/** Degrees: a path that is seen from far off its end still shows. */
const narrowest = 3;

/** Sun and sky over a spot at a moment. */
export type Above = Pick<SpotFigures, 'sun' | 'sky'>;

/**
 * By day as pale as the picture is poor (`total`: of its score), and one colour all round under a sky without sun. Glare keeps
 * its dark colour, on which its hatching shows: it is a caution, whatever the picture is worth.
 */
export const ringColour = (
  lightAngle: number,
  total: number,
  glare: boolean,
  { sun, sky }: Above,
): string => {
  if (sun.geometricAltitude < civilTwilightAltitude) return darkColour;
  if (sun.geometricAltitude < sunriseAltitude) return twilightColour;
  if (glare) return lightColour(lightAngle);
  return faded(isFlat(sky) ? flatColour : lightColour(lightAngle), scoreWord(total));
};

/** Splits one run of usable samples (the same at both moments but for the light) into sweeps of wedges. */
export function sweepsOf(runA: SectorRun, runB: SectorRun, aboveA: Above, aboveB: Above): Sweep[] {
  const bearings = unwound(runA.bearings);
  const sweeps: Sweep[] = [];
  for (const [from, to] of monotonic(bearings)) {
    const limits = limitsOf(bearings, from, to);
    sweeps.push({
      edges: arc(limits[0] as number, limits[limits.length - 1] as number),
      a: wedgesOf(runA, aboveA, from, to, limits),
      b: wedgesOf(runB, aboveB, from, to, limits),
      focalLength: least(runA.focalLengths, from, to),
    });
  }
  return sweeps;
}

function unwound(bearings: readonly number[]): number[] {
  const out: number[] = [];
  let before = bearings[0] ?? 0;
  for (const bearing of bearings) {
    before += wrap180(bearing - before);
    out.push(before);
  }
  return out;
}

/** First and last index of stretches that turn one way; a stretch begins with the sample at which the last one ended. */
function monotonic(bearings: readonly number[]): [number, number][] {
  const parts: [number, number][] = [];
  let from = 0;
  let way = 0;
  for (let i = 1; i < bearings.length; i++) {
    const step = (bearings[i] as number) - (bearings[i - 1] as number);
    const overhead = Math.abs(step) > jump;
    if (overhead || step * way < 0) {
      parts.push([from, i - 1]);
      from = overhead ? i : i - 1;
      way = overhead ? 0 : Math.sign(step);
    } else if (way === 0) {
      way = Math.sign(step);
    }
  }
  parts.push([from, bearings.length - 1]);
  return parts;
}

/** Where each sample's share of the sector ends: half-way to the next; widened when there would be nothing to see. */
function limitsOf(bearings: readonly number[], from: number, to: number): number[] {
  const first = bearings[from] as number;
  const last = bearings[to] as number;
  const sign = last < first ? -1 : 1;
  const missing = Math.max(0, narrowest - Math.abs(last - first)) / 2;
  const limits = [first - sign * missing];
  for (let i = from; i < to; i++) limits.push(((bearings[i] as number) + (bearings[i + 1] as number)) / 2);
  limits.push(last + sign * missing);
  return limits;
}

function wedgesOf(
  run: SectorRun,
  above: Above,
  from: number,
  to: number,
  limits: readonly number[],
): Wedge[] {
  const colourAt = (i: number) =>
    ringColour(run.lightAngles[i] as number, run.totals[i] as number, run.glare[i] as boolean, above);
  const wedges: Wedge[] = [];
  let begun = 0;
  let colour = colourAt(from);
  for (let i = from; i <= to; i++) {
    const glare = run.glare[i] as boolean;
    const next = i < to ? colourAt(i + 1) : '';
    if (next === colour && run.glare[i + 1] === glare) continue;
    wedges.push({ edges: arc(limits[begun] as number, limits[i - from + 1] as number), colour, glare });
    begun = i - from + 1;
    colour = next;
  }
  return wedges;
}

/** Bearings from one to another, at most 5 degrees apart. */
function arc(from: number, to: number): number[] {
  const steps = Math.max(1, Math.ceil(Math.abs(to - from) / finest));
  const edges: number[] = [];
  for (let i = 0; i <= steps; i++) edges.push(from + ((to - from) * i) / steps);
  return edges;
}

function least(values: readonly number[], from: number, to: number): number {
  let least = Infinity;
  for (let i = from; i <= to; i++) least = Math.min(least, values[i] as number);
  return least;
}
