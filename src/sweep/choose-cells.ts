import { middleOf } from './area';
import { apart, mostCandidates, mostOnOneWay } from './practice';
import type { SweepPlan } from './plan';
import { groundCodes, type CellFigures } from './sweep';

/** A cell that is proposed: its place in the figures. */
type At = number;

/** Whose way a cell lies on, null for none; and whether somebody can stand in it at all. */
export interface CellWays {
  wayOf(cell: number): string | null;
  isStandable(cell: number): boolean;
}

/**
 * The cells to propose, best first: open ground before unknown, the highest sum of good minutes over the paths, at equal
 * sums the highest worth in all, then the least focal length, then the first. Around each all others within 300 m are
 * dropped, and no more than three lie on one way. Each path's best is among them if it has a good minute.
 */
export function chooseCells(figures: CellFigures, { area, paths }: SweepPlan, ways: CellWays): At[] {
  const count = paths.length;
  const sums = new Float64Array(figures.cells.length);
  const kept: At[] = [];
  for (let k = 0; k < figures.cells.length; k++) {
    let sum = 0;
    for (let p = 0; p < count; p++) sum += figures.goodByPath[k * count + p] as number;
    sums[k] = sum;
    if (sum > 0 && groundCodes[figures.ground[k] as number] !== 'closed') kept.push(k);
  }
  const number = (list: ArrayLike<number>, k: At) => list[k] as number;
  const before = (first: (k: At) => number) => (a: At, b: At) =>
    number(figures.ground, a) - number(figures.ground, b) ||
    first(b) - first(a) ||
    number(sums, b) - number(sums, a) ||
    number(figures.summedWorth, b) - number(figures.summedWorth, a) ||
    number(figures.focal, a) - number(figures.focal, b) ||
    number(figures.cells, a) - number(figures.cells, b);
  const ranked = kept.toSorted(before((k) => number(sums, k)));

  const chosen: At[] = [];
  const onWay = new Map<string, number>();
  const isFar = (k: At) => {
    const [x, y] = middleOf(area, number(figures.cells, k));
    return chosen.every((c) => {
      const [cx, cy] = middleOf(area, number(figures.cells, c));
      return Math.hypot(cx - x, cy - y) >= apart;
    });
  };
  const take = (k: At) => {
    chosen.push(k);
    const way = ways.wayOf(number(figures.cells, k));
    if (way !== null) onWay.set(way, (onWay.get(way) ?? 0) + 1);
  };
  const standable = (k: At) => ways.isStandable(number(figures.cells, k));
  const isFullWay = (k: At) => {
    const way = ways.wayOf(number(figures.cells, k));
    return way !== null && (onWay.get(way) ?? 0) >= mostOnOneWay;
  };

  const first = ranked.find(standable);
  if (first === undefined) return [];
  take(first);
  // Each path's best, unless one that is chosen is as good for it; of equals one that lies apart.
  for (let p = 0; p < count && chosen.length < mostCandidates; p++) {
    const goodOf = (k: At) => number(figures.goodByPath, k * count + p);
    const best = kept.toSorted(before(goodOf)).filter((k) => goodOf(k) > 0);
    const top = best.find(standable);
    if (top === undefined) continue;
    const isBest = (k: At) =>
      goodOf(k) === goodOf(top) && number(figures.ground, k) === number(figures.ground, top);
    if (chosen.some(isBest)) continue;
    take(best.find((k) => isBest(k) && isFar(k) && standable(k)) ?? top);
  }
  for (const k of ranked) {
    if (chosen.length >= mostCandidates) break;
    if (isFar(k) && !isFullWay(k) && standable(k)) take(k);
  }
  return chosen.sort(before((k) => number(sums, k)));
}
