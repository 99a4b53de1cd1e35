import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { destination, groundLine } from '../../../src/figures/geometry/earth';
import { moveTime } from '../../../src/figures/plan/day-plan';
import { moveByWays } from '../../../src/figures/plan/move-by-ways';
import type { Position } from '../../../src/survey/document';
import { setGoing, setMove } from '../../../src/survey/edits/set-plan';
import { readContents } from '../../../src/survey/contents';
import { contentsOf, feature, opened, runwayFeature } from '../../support/contents';

const origin: Position = [8.5, 47.4];
const at = (east: number, north: number) =>
  destination(destination(origin, 90, east), north < 0 ? 180 : 0, Math.abs(north));
const way = (id: string, use: string, points: readonly (readonly [number, number])[], access = 'public') =>
  feature(
    id,
    'ground-use',
    'LineString',
    points.map(([x, y]) => at(x, y)),
    { use, access },
  );
const field = (...features: unknown[]) =>
  contentsOf(
    [runwayFeature('rwy', at(0, 0), at(2000, 0), [{ designator: '09' }, { designator: '27' }]), ...features],
    { site: { reference: origin } },
  );

describe('the way between two spots over roads and paths', () => {
  /** A road round the west end: 500 m north of the runway, 300 m west of it, 500 m south. */
  const round = way('round', 'road', [
    [800, 500],
    [-300, 500],
    [-300, -500],
    [800, -500],
  ]);

  it('[F960] follows the road round the runway, m by m, never across it', () => {
    // 500 + 300 + 1,000 + 300 + 500 m along, at 1.25 m/s.
    const found = moveByWays(at(500, 500), at(500, -500), field(round), 'foot');
    expect(found).toMatchObject({ by: 'foot', over: 'ways', metres: 2600, minutes: 35 });
    expect(moveByWays(at(500, -500), at(500, 500), field(round), 'foot')).toEqual(found);
    // Between two vertices one turns off where one has to.
    expect(moveByWays(at(100, 500), at(400, 500), field(round), 'foot')?.metres).toBe(300);
  });

  it('[F961] arguable: from a spot 120 m beside the road one walks there first; from 400 m nobody knows the way', () => {
    const metres = moveByWays(at(500, 620), at(100, 500), field(round), 'foot')?.metres ?? NaN;
    expect(Math.abs(metres - 520)).toBeLessThanOrEqual(10);
    expect(moveByWays(at(500, 900), at(100, 500), field(round), 'foot')).toBeNull();
    // Where the ways do not lead, the estimate stands in.
    const estimate = moveTime(
      field(round),
      { id: 'a', position: at(500, 900) } as never,
      { id: 'b', position: at(100, 500) } as never,
    );
    expect(estimate.over).toBe('straight');
  });

  it('[F962] arguable: a road that is closed to people is no short cut, and a railway no way at all', () => {
    const from = at(500, 500);
    const to = at(500, -500);
    const cut = (use: string, access: string) =>
      field(
        round,
        way(
          'cut',
          use,
          [
            [500, 500],
            [-150, 0],
            [500, -500],
          ],
          access,
        ),
      );
    expect(moveByWays(from, to, cut('road', 'forbidden'), 'foot')?.metres).toBe(2600);
    expect(moveByWays(from, to, cut('rail', 'public'), 'foot')?.metres).toBe(2600);
    expect(moveByWays(from, to, cut('path', 'unknown'), 'foot')?.metres).toBe(1640);
    // A car keeps to roads.
    expect(moveByWays(from, to, cut('path', 'unknown'), 'car')).toMatchObject({ metres: 2600, minutes: 13 });
    expect(moveByWays(from, to, cut('path', 'unknown'), 'bicycle')).toMatchObject({
      metres: 1640,
      minutes: 7,
    });
  });

  it('[F963] arguable: a path drawn up to 8 m from a road joins it; two that cross without a corner may be a bridge', () => {
    const joined = field(
      way('road', 'road', [
        [0, 800],
        [600, 800],
      ]),
      way('path', 'path', [
        [300, 792],
        [300, 400],
      ]),
    );
    expect(moveByWays(at(0, 800), at(300, 400), joined, 'foot')?.metres).toBe(700);
    const bridge = field(
      way('road', 'road', [
        [0, 800],
        [900, 800],
      ]),
      way('path', 'path', [
        [450, 1300],
        [450, 300],
      ]),
    );
    expect(moveByWays(at(0, 800), at(450, 300), bridge, 'foot')).toBeNull();
  });

  it('[F964] goes on foot what people walk with a bag, else by car; the typed word goes before both', () => {
    const near = moveByWays(at(100, 500), at(400, 500), field(round), null);
    expect(near?.by).toBe('foot');
    expect(moveByWays(at(500, 500), at(500, -500), field(round), null)?.by).toBe('car');
    const survey = opened(readFileSync('sample-sites/tolverby.geojson', 'utf8'));
    const contents = readContents(setGoing(survey, 'bicycle'));
    const [orchard, , lane] = contents.spots;
    if (!orchard || !lane) throw new Error('expected spots');
    const ride = moveTime(contents, orchard, lane);
    expect(ride).toMatchObject({ by: 'bicycle', over: 'ways' });
    expect(ride.metres).toBeGreaterThan(groundLine(orchard.position, lane.position).distance);
    const typed = readContents(setMove(setGoing(survey, 'bicycle'), orchard.id, lane.id, 4));
    expect(moveTime(typed, orchard, lane)).toMatchObject({ by: 'stated', minutes: 4, metres: ride.metres });
  });
});
