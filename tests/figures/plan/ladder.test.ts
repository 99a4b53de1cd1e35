import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ladderOf } from '../../../src/figures/plan/ladder';
import { worthwhile } from '../../../src/figures/plan/windows';
import type { StandingSpot } from '../../../src/survey/schema/standing-spot';
import type { DayRow } from '../../../src/figures/when/day-rows';

const rowOf = (id: string) => ({ key: id, spot: { id } as StandingSpot }) as DayRow;
const steps = 96;
const gain = (value: number, ...spans: readonly (readonly [number, number])[]) => {
  const out = new Float64Array(steps);
  for (const [a, b] of spans) out.fill(value, a, b);
  return out;
};
const told = (stays: ReturnType<typeof ladderOf>) => stays.map(({ spot, from, to }) => [spot.id, from, to]);

describe('the ladder of the day', () => {
  test('[F273] takes what is better, and the way out of the time in which nothing is lost', () => {
    const rows = [
      { row: rowOf('a'), gain: gain(1, [10, 30]) },
      { row: rowOf('b'), gain: gain(1, [40, 60]) },
    ];
    expect(told(ladderOf(rows, () => 20))).toEqual([
      ['a', 10, 30],
      ['b', 40, 60],
    ]);
  });

  test('[F274] does not move for less than it is worth', () => {
    // Five minutes each: the move loses 2 steps and must bring 3 more; b is better for 4 steps by 1 each.
    const rows = [
      { row: rowOf('a'), gain: gain(0.5, [10, 30]) },
      { row: rowOf('b'), gain: gain(1, [26, 30]) },
    ];
    expect(told(ladderOf(rows, () => 10))).toEqual([['a', 10, 30]]);
    const longer = [rows[0], { row: rowOf('b'), gain: gain(1, [20, 60]) }].filter((r) => r !== undefined);
    expect(told(ladderOf(longer, () => 10))).toEqual([
      ['a', 10, 18],
      ['b', 20, 60],
    ]);
  });

  test('[F275] is at no time at two spots, and never worse than the best single spot', () => {
    const span = fc.tuple(fc.integer({ min: 0, max: 80 }), fc.integer({ min: 4, max: 16 }));
    const spots = fc.array(fc.array(span, { maxLength: 3 }), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(spots, fc.integer({ min: 1, max: 60 }), (list, minutes) => {
        const rows = list.map((spans, i) => ({
          row: rowOf(`s${i}`),
          gain: gain((i + 1) / 4, ...spans.map(([a, n]) => [a, Math.min(steps, a + n)] as const)),
        }));
        const stays = ladderOf(rows, () => minutes);
        const worth = ({ spot, from, to }: (typeof stays)[number]) => {
          const row = rows.find((r) => r.row.spot === spot);
          return row?.gain.subarray(from, to).reduce((x, y) => x + y, 0) ?? 0;
        };
        stays.slice(1).forEach((stay, i) => {
          const before = stays[i];
          if (!before) return;
          const way = stay.spot === before.spot ? 0 : Math.ceil(minutes / 5);
          expect(stay.from - before.to).toBeGreaterThanOrEqual(way);
        });
        const single = Math.max(
          ...rows.map(({ gain: g }) =>
            worthwhile(g).reduce((sum, [a, b]) => sum + g.subarray(a, b).reduce((x, y) => x + y, 0), 0),
          ),
        );
        // Stretches shorter than a window may be counted while moving is weighed, and are left out at the end.
        const total = stays.reduce((sum, stay) => sum + worth(stay), 0);
        expect(total).toBeGreaterThanOrEqual(single - 3 * list.length);
      }),
      { seed: 273, numRuns: 200 },
    );
  });

  test('[F276] a window bridges ten minutes of lesser light and is at least a quarter of an hour long', () => {
    expect(worthwhile(gain(1, [5, 7], [9, 12]))).toEqual([[5, 12]]);
    expect(worthwhile(gain(1, [5, 8], [11, 14]))).toEqual([
      [5, 8],
      [11, 14],
    ]);
    expect(worthwhile(gain(1, [5, 7]))).toEqual([]);
  });
});
