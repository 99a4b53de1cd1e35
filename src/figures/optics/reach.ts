import type { Kit, Lens } from '../../survey/schema/kit';
import { leastFill, usableCrop } from '../practice';
import { fillAt, lossOf, lossRounding, ranked, settingFor, takenAt } from './lens-fit';

/** A setting: the focal lengths in mm of a lens alone (extender null) or with one of its extenders. */
export interface FocalRange {
  readonly shortest: number;
  readonly longest: number;
  readonly extender: number | null;
}

/** The settings of a lens: alone first, then with its extenders, the weakest first. */
export function rangesOf(lens: Pick<Lens, 'shortest' | 'longest' | 'extenders'>): readonly FocalRange[] {
  const alone = { shortest: lens.shortest, longest: lens.longest, extender: null };
  const extended = lens.extenders
    .toSorted((a, b) => a - b)
    .map((x) => ({ shortest: lens.shortest * x, longest: lens.longest * x, extender: x }));
  return [alone, ...extended];
}

/** What a kit can reach: the settings of each lens, and the ends of them all; mm. */
export interface Reach {
  readonly lenses: readonly (readonly FocalRange[])[];
  readonly ranges: readonly FocalRange[];
  /** Share of the frame that the subject is to fill. */
  readonly fill: number;
  readonly shortest: number;
  readonly longest: number;
  /** Needed focal length up to which a sample is usable: wider than what fits, on purpose, for it crops. */
  readonly usableTo: number;
}

export function reachOf(kit: {
  readonly fill: Kit['fill'];
  readonly lenses: readonly Pick<Lens, 'shortest' | 'longest' | 'extenders'>[];
}): Reach {
  const lenses = kit.lenses.map(rangesOf);
  const ranges = lenses.flat();
  const longest = Math.max(0, ...ranges.map((r) => r.longest));
  const shortest = ranges.length > 0 ? Math.min(...ranges.map((r) => r.shortest)) : 0;
  return { lenses, ranges, fill: kit.fill, shortest, longest, usableTo: usableCrop * longest };
}

/**
 * 1 when a setting of the kit frames it (fits or is tight), else the square of the shortfall of the one that comes
 * nearest: too short means cropping, too long means cutting off. 0 without lenses.
 */
export function reachFactor({ ranges, fill }: Reach, needed: number): number {
  let best = 0;
  for (const range of ranges) {
    const rank = ranked(fillAt(range, needed, fill), fill);
    if (rank === 1) return 1;
    if (rank > best) best = rank;
  }
  return best * best;
}

/** The focal length in mm at which the best-fitting setting of the kit would take the picture; 0 without lenses. */
export function takenWith(reach: Reach, needed: number): number {
  let taken = 0;
  let least = Infinity;
  for (const settings of reach.lenses) {
    const setting = settingFor(settings, needed, reach.fill);
    const loss = lossOf(setting.extender, fillAt(setting, needed, reach.fill), reach.fill);
    if (loss >= least - lossRounding) continue;
    taken = takenAt(setting, needed);
    least = loss;
  }
  return taken;
}

/** What the reach factor cannot exceed when at least `least` mm are needed. */
export function farReach({ longest }: Reach, least: number): number {
  const fits = longest / leastFill;
  return least > fits ? (fits / least) ** 2 : 1;
}

/** The needed focal length in mm beyond which `farReach` is below a share: its inverse, a rounding longer. */
export const reachedTo = ({ longest }: Reach, share: number): number =>
  share > 0 ? ((1 + rounding) * longest) / leastFill / Math.sqrt(share) : Infinity;
const rounding = 1e-9;
