import { expect, test } from 'vitest';
import { Scratch } from '../../src/figures/scratch';
import { spotFigures } from '../../src/figures/spot-figures';
import { pathsOf } from '../../src/figures/traffic/paths';
import { readContents } from '../../src/survey/contents';
import { cellPosition } from '../../src/sweep/area';
import { spotThere } from '../../src/figures/spot/spot-there';
import { planSweep, type SweepAsked } from '../../src/sweep/plan';
import { sightShares } from '../../src/sweep/sight-shares';
import { Sweep } from '../../src/sweep/sweep';
import { builtUpSurvey, wavyGround } from '../bench/built-up-survey';

/** The town of the benchmark, three times as high, so that much is hidden. */
const town = readContents(builtUpSurvey());
const contents = { ...town, obstacles: town.obstacles.map((o) => ({ ...o, height: 3 * o.height })) };
const [path] = pathsOf(contents, (kind, runway) => runway === 'long' && kind === 'arrival', null);
const morning = Date.UTC(2026, 5, 21, 7);
const asked: SweepAsked = {
  side: 2400,
  cell: 100,
  hours: { from: morning, to: morning + 2 * 3_600_000 },
  step: 3600,
  names: [path?.ref.path ?? ''],
  wind: null,
  configuration: 0,
  at: morning,
};

/** What cells and figures say of the same places; one path, so that it is the best one. */
function both(question: SweepAsked) {
  const planned = planSweep(contents, question, null);
  if (!planned.ok) throw new Error(planned.reason);
  const { plan } = planned;
  const sweep = new Sweep(contents, plan, wavyGround());
  const figures = sweep.figuresOf(Int32Array.from({ length: plan.area.count ** 2 }, (_, i) => i));
  const scratch = new Scratch();
  const there = (cell: number) =>
    spotFigures(
      spotThere(cellPosition(plan.area, cell), null),
      plan.paths,
      sweep.outlook,
      plan.instants,
      scratch,
    ).flatMap(({ paths }) => paths[0] ?? []);
  const worthy = [...figures.worth.keys()].filter((i) => (figures.worth[i] ?? 0) > 0 && i % 5 === 0);
  return { plan, figures, there, worthy };
}

test('[S208] the layer "share in sight" is the visibleShare of a spot there, among obstacles and on hills', () => {
  const { plan, there, worthy } = both(asked);
  const shares = sightShares(contents, plan, wavyGround());
  let partly = 0;
  for (const cell of worthy) {
    const seen = there(cell);
    const best = seen.reduce((a, b) => (b.best.score.total > a.best.score.total ? b : a));
    if (best.visibleShare === null) expect(shares[cell]).toBeNaN();
    else expect(shares[cell]).toBeCloseTo(best.visibleShare, 6);
    if ((shares[cell] ?? 0) > 0.01 && (shares[cell] ?? 0) < 0.99) partly++;
  }
  expect(worthy.length).toBeGreaterThan(25);
  expect(partly).toBeGreaterThan(5);
});

test('[S209] the layer "light at A" is the factor of light of the best sample at that instant for a spot there', () => {
  const { figures, there, worthy } = both({
    ...asked,
    hours: { from: morning, to: morning + 1000 },
    step: 1,
  });
  const lights = new Set<number>();
  for (const cell of worthy) {
    const [seen] = there(cell);
    expect(figures.light[cell]).toBeCloseTo(seen?.best.score.light ?? NaN, 6);
    lights.add(Math.round(10 * (figures.light[cell] ?? 0)));
  }
  expect(worthy.length).toBeGreaterThan(25);
  expect(lights.size).toBeGreaterThan(3);
});
