import { fullestFit, leastFill } from '../practice';

/** How a subject sits in the frame at a setting. */
export type Fit = 'too-short' | 'fits' | 'tight' | 'too-long';

interface Range {
  readonly shortest: number;
  readonly longest: number;
}

/** Rounding of a share of the frame: 500 mm needed on a 500 is exactly what is wanted. */
const rounding = 1e-9;

/** The focal length in mm of a setting that is nearest to the needed one. */
export const takenAt = ({ shortest, longest }: Range, needed: number): number =>
  Math.max(shortest, Math.min(longest, needed));

/** Share of the frame that the subject fills there; `fill` is what it is to fill at the needed focal length. */
export const fillAt = (range: Range, needed: number, fill: number): number =>
  fill * (takenAt(range, needed) / needed);

/** Room to spare counts: a subject fits from three quarters of the wanted share up to what leaves a margin round it. */
export function fitOf(filled: number, fill: number): Fit {
  if (filled < leastFill * fill - rounding) return 'too-short';
  if (filled <= Math.max(fullestFit, fill) + rounding) return 'fits';
  return filled <= 1 + rounding ? 'tight' : 'too-long';
}

/** 1 for what fits or is tight, else how near it comes to that: what is kept of the size, or of the subject. */
export function ranked(filled: number, fill: number): number {
  const fit = fitOf(filled, fill);
  if (fit === 'too-short') return filled / (leastFill * fill);
  return fit === 'too-long' ? 1 / filled : 1;
}

/** How far a share of the frame is from those that fit. */
const beside = (filled: number, fill: number): number =>
  Math.max(0, leastFill * fill - filled, filled - Math.max(fullestFit, fill));

/**
 * The setting by which a lens is judged, out of its settings from the bare lens to the strongest extender: bare if
 * that fits, is tight or too long; else the least extender that fits; else what comes nearest to fitting.
 */
export function settingFor<R extends Range>(settings: readonly R[], needed: number, fill: number): R {
  const bare = settings[0] as R;
  if (fitOf(fillAt(bare, needed, fill), fill) !== 'too-short') return bare;
  let nearest = bare;
  for (const setting of settings) {
    const filled = fillAt(setting, needed, fill);
    if (fitOf(filled, fill) === 'fits') return setting;
    if (beside(filled, fill) < beside(fillAt(nearest, needed, fill), fill) - rounding) nearest = setting;
  }
  return nearest;
}

/**
 * What speaks against taking a lens at a setting, the least is best: it fits, rather without extender; else it is
 * tight; else it loses least to cropping or cutting off. Alike, the one that fills the frame nearest to what is wanted.
 */
export function lossOf(extender: number | null, filled: number, fill: number): number {
  const fit = fitOf(filled, fill);
  if (fit === 'too-short' || fit === 'too-long') return 4 - ranked(filled, fill);
  // Under 1, for at most the whole frame is filled.
  const off = Math.abs(filled - fill);
  return off + (fit === 'tight' ? 2 : extender === null ? 0 : 1);
}

/** Losses that are as good as equal: the lens that stands first in the kit goes. */
export const lossRounding = rounding;
