import type { Kit, Lens } from '../../survey/schema/kit';
import { usableCrop } from '../practice';

/** Focal lengths in mm that a lens covers, alone (extender null) or with one of its extenders. */
export interface FocalRange {
  readonly shortest: number;
  readonly longest: number;
  readonly extender: number | null;
}

export function rangesOf(lens: Lens): readonly FocalRange[] {
  const alone = { shortest: lens.shortest, longest: lens.longest, extender: null };
  const extended = lens.extenders.map((x) => ({
    shortest: lens.shortest * x,
    longest: lens.longest * x,
    extender: x,
  }));
  return [alone, ...extended];
}

/** What a kit can reach: every range, and the ends of them all; mm. */
export interface Reach {
  readonly ranges: readonly FocalRange[];
  readonly shortest: number;
  readonly longest: number;
  /** Needed focal length up to which a sample is usable. */
  readonly usableTo: number;
}

export function reachOf(kit: Kit): Reach {
  const ranges = kit.lenses.flatMap(rangesOf);
  const longest = Math.max(0, ...ranges.map((r) => r.longest));
  const shortest = ranges.length > 0 ? Math.min(...ranges.map((r) => r.shortest)) : 0;
  return { ranges, shortest, longest, usableTo: usableCrop * longest };
}

/**
 * 1 when a lens covers the needed focal length, else the square of the shortfall of the lens that comes nearest:
 * too short means cropping, too long means cutting off. 0 without lenses or inside the aircraft.
 */
export function reachFactor(reach: Reach, needed: number): number {
  let best = 0;
  for (const { shortest, longest } of reach.ranges) {
    const ratio = needed > longest ? longest / needed : needed < shortest ? needed / shortest : 1;
    if (ratio > best) best = ratio;
  }
  return best * best;
}

/** The focal length in mm at which the kit would take the picture. */
export const keptWithin = (reach: Reach, needed: number) =>
  Math.max(reach.shortest, Math.min(reach.longest, needed));

/** What the reach factor cannot exceed when at least `least` mm are needed. */
export const farReach = (reach: Reach, least: number) =>
  least > reach.longest ? (reach.longest / least) ** 2 : 1;
