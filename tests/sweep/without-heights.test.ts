import { expect, test } from 'vitest';
import type { Position } from '../../src/survey/document';
import { spotThere } from '../../src/figures/spot/spot-there';
import { spotFigures } from '../../src/figures/spot-figures';
import { Scratch } from '../../src/figures/scratch';
import type { ElevationGrid } from '../../src/figures/sight/terrain';
import { everyPath } from '../../src/figures/traffic/every-path';
import { pastUse, type PastUse } from '../../src/figures/flown/past-use';
import type { EndUse } from '../../src/figures/flown/end-uses';
import { cellPosition } from '../../src/sweep/area';
import { overYear } from '../../src/sweep/over-year';
import { planSweep } from '../../src/sweep/plan';
import { sketchOf } from '../../src/sweep/sketch';
import { Sweep } from '../../src/sweep/sweep';
import { contentsOf, plainKit, plainSubject, runwayFeature } from '../support/contents';

/** A plateau 400 m above the sea. */
const plateau: ElevationGrid = {
  ...{ columns: 200, rows: 200, west: 7.9, north: 50.1, stepLng: 0.001, stepLat: 0.001 },
  heights: new Float32Array(40_000).fill(400),
};
const [west, east]: readonly [Position, Position] = [
  [8.01, 50.02],
  [8.0305, 50.021],
];
/** An airfield whose ends state a height, or none. */
const field = (elevation?: number) =>
  contentsOf(
    [
      runwayFeature('main', west, east, [
        { designator: '08', ...(elevation !== undefined && { elevation }) },
        { designator: '26', ...(elevation !== undefined && { elevation }) },
      ]),
    ],
    {
      subjects: [{ ...plainSubject, groundRun: 1200 }],
      kit: plainKit,
      site: { reference: [8.01, 50.02], timeZone: 'Europe/Berlin' },
    },
  );
const at = Date.UTC(2026, 5, 21, 8);

// The runway takes the terrain's height, as it does for a spot: on the plateau and not 400 m below it.
test('[S345] a survey that states no heights: a cell on the plateau is worth what a spot there is', () => {
  const contents = field();
  const asked = { side: 2000, cell: 100, hours: { from: at, to: at + 1000 }, step: 1 };
  const planned = planSweep(
    contents,
    { ...asked, names: ['main/26/arrival'], wind: null, configuration: 0, at },
    plateau,
  );
  if (!planned.ok) throw new Error(planned.reason);
  const { plan } = planned;
  const sweep = new Sweep(contents, plan, plateau);
  const figures = sweep.figuresOf(Int32Array.from({ length: plan.area.count ** 2 }, (_, i) => i));
  const paths = everyPath(contents, (kind, _, end) => kind === 'arrival' && end === 1, plateau);
  const worthy = [...figures.worth.keys()]
    .filter((cell) => (figures.worth[cell] ?? 0) > 0)
    .filter((_, i) => i % 4 === 0);
  expect(worthy.length).toBeGreaterThan(20);
  for (const cell of worthy) {
    const spot = spotThere(cellPosition(plan.area, cell), null);
    const [seen] = spotFigures(spot, paths, sweep.outlook, [at], new Scratch());
    expect(figures.focal[cell]).toBeCloseTo(seen?.paths[0]?.best.focalLength ?? NaN, 6);
    expect(figures.worth[cell]).toBeCloseTo(seen?.paths[0]?.best.score.total ?? NaN, 6);
  }
});

test('[S348] nor does the sketch look up at a field from the level of the sea', () => {
  const needed = (elevation?: number) => {
    const contents = field(elevation);
    const asked = { side: 2000, cell: 20, hours: { from: at, to: at + 1000 }, step: 1 };
    const planned = planSweep(
      contents,
      { ...asked, names: ['main/26/arrival'], wind: null, configuration: 0, at },
      plateau,
    );
    if (!planned.ok) throw new Error(planned.reason);
    return [...sketchOf(new Sweep(contents, planned.plan, plateau)).focal];
  };
  expect(needed(400).filter((focal) => focal > 0).length).toBeGreaterThan(4);
  expect(needed()).toEqual(needed(400));
});

test('[S346] nor does the year look from a plateau into the ground: stated or taken from the terrain, a height is a height', () => {
  const uses = Array.from({ length: 60 }, (_, i): EndUse => ({
    runway: 'main',
    end: 1,
    kind: 'arrival',
    instant: at + i * 86_400_000,
  }));
  const year = (elevation?: number) => {
    const contents = field(elevation);
    const past = pastUse(contents, null, uses) as PastUse;
    const place = { position: [8.0247, 50.0171] as const, eye: 401.7, spot: null };
    return overYear(contents, past, [place], at, 3600, plateau).minutes[0] ?? [];
  };
  expect(Math.max(...year(400))).toBeGreaterThan(30);
  expect(year()).toEqual(year(400));
});
