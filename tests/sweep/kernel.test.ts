import { expect, test } from 'vitest';
import { alwaysClear, type SkyAt } from '../../src/figures/light/sky';
import { siteFrame } from '../../src/figures/sight/site-frame';
import { groundAt } from '../../src/figures/sight/ground';
import { outlookOf } from '../../src/figures/outlook';
import { inspectPath } from '../../src/figures/spot/inspect-path';
import { Scratch } from '../../src/figures/scratch';
import { spotFigures } from '../../src/figures/spot-figures';
import { fieldElevation, pathsOf, type Path } from '../../src/figures/traffic/paths';
import type { ElevationGrid } from '../../src/figures/sight/terrain';
import { readContents, type Contents } from '../../src/survey/contents';
import type { Position } from '../../src/survey/document';
import { spotThere } from '../../src/figures/spot/spot-there';
import { areaAbout, cellPosition, type Area } from '../../src/sweep/area';
import { Kernel } from '../../src/sweep/kernel/kernel';
import { bestInstant } from '../../src/sweep/sweep';
import { builtUpSurvey, wavyGround } from '../bench/built-up-survey';
import { contentsOf, plainKit, plainSubject, runwayFeature } from '../support/contents';
import { once } from '../support/once';
import { seeded } from '../support/tolerance';

const hour = 3_600_000;
const summer = Date.UTC(2026, 5, 21);
const winter = Date.UTC(2026, 11, 21);

/** A spot as the figures know it, at a cell. */
const spotAt = (position: Position) => spotThere(position, null);

/** Places of an area, near and far, and what kernel and figures say of them: the greatest difference. */
function compared(
  contents: Contents,
  paths: readonly Path[],
  instants: readonly number[],
  cells: number,
  seed: number,
  terrain: ElevationGrid | null = null,
  skyAt: SkyAt = alwaysClear,
) {
  const outlook = { ...outlookOf(contents, terrain), skyAt };
  const area: Area = areaAbout(contents.runways, siteFrame(contents.site.reference), 20, null);
  const middle = cellPosition(area, Math.floor((area.count * area.count) / 2));
  const kernel = new Kernel({ paths, outlook, instants, middle, everyInstant: true });
  const random = seeded(seed);
  const scratch = new Scratch();
  let worst = 0;
  let [lit, good, changed] = [0, 0, 0];
  const bare = new Kernel({
    paths,
    outlook: { ...outlook, around: null },
    instants,
    middle,
    everyInstant: true,
  });
  for (let k = 0; k < cells; k++) {
    const position = cellPosition(area, Math.floor(random() * area.count * area.count));
    const spot = spotAt(position);
    const ground = groundAt(
      position,
      contents.runways,
      fieldElevation(contents),
      outlook.around?.terrain ?? null,
    ).elevation;
    kernel.at(position, ground + 1.7);
    bare.at(position, ground + 1.7);
    changed += bare.worth.filter((total, t) => total !== kernel.worth[t]).length;
    spotFigures(spot, paths, outlook, instants, scratch).forEach((figures, t) => {
      const best = figures.paths.reduce((a, b) => (b.best.score.total > a.best.score.total ? b : a));
      const { total, light } = best.best.score;
      worst = Math.max(worst, Math.abs((kernel.worth[t] ?? NaN) - total));
      if (total > 0) {
        lit++;
        // At equal totals any of the best will do.
        const equals = figures.paths.filter((p) => p.best.score.total === total);
        if (equals.length === 1) {
          worst = Math.max(worst, Math.abs((kernel.focal[t] ?? NaN) / (best.best.focalLength ?? NaN) - 1));
          worst = Math.max(worst, Math.abs((kernel.light[t] ?? NaN) - light));
        }
      }
      good += figures.paths.filter((_, p) => kernel.good[p * instants.length + t] === 1).length;
    });
  }
  return { worst, lit, good, changed };
}

/** The town of the benchmark, three times as high. */
const tallTown = once((): Contents => {
  const contents = readContents(builtUpSurvey());
  return { ...contents, obstacles: contents.obstacles.map((o) => ({ ...o, height: 3 * o.height })) };
});

const hours = (from: number, count: number, step = hour) =>
  Array.from({ length: count }, (_, k) => from + k * step);

test('[S120] worth at a cell is the total of the best sample that figures give a spot there, on open ground', () => {
  const contents = contentsOf(
    [
      runwayFeature(
        'main',
        [8.01, 50.02],
        [8.0405, 50.031],
        [
          { designator: '06', elevation: 112 },
          { designator: '24', elevation: 131, displaced: 240 },
        ],
      ),
      runwayFeature('cross', [8.02, 50.032], [8.028, 50.019], [{ designator: '15' }, { designator: '33' }]),
    ],
    { subjects: [plainSubject], kit: plainKit },
  );
  const paths = pathsOf(contents, () => true, null);
  for (const [day, seed] of [
    [summer, 1],
    [winter, 2],
  ] as const) {
    const { worst, lit, good } = compared(contents, paths, hours(day, 12, 2 * hour), 12, seed);
    expect(worst).toBeLessThan(1e-6);
    expect(lit).toBeGreaterThan(30);
    expect(good).toBeGreaterThan(2);
  }
});

test('[S120] ... among 500 obstacles, some in leaf, on ground with waves, over two months', () => {
  const contents = tallTown();
  const paths = pathsOf(contents, (kind) => kind === 'arrival' || kind === 'departure', null);
  const instants = [...hours(summer + 4 * hour, 8, 2 * hour), ...hours(winter + 8 * hour, 4, 2 * hour)];
  const { worst, changed, lit } = compared(contents, paths, instants, 12, 3, wavyGround());
  expect(worst).toBeLessThan(1e-6);
  expect(changed).toBeGreaterThan(5);
  expect(lit).toBeGreaterThan(50);
});

test('[S120] ... under cloud and in mist, each hour another', () => {
  const contents = tallTown();
  const paths = pathsOf(
    contents,
    (kind, _, end) => kind === 'arrival' || (kind === 'departure' && end === 0),
    null,
  );
  const skyAt: SkyAt = (instant) => {
    const at = (instant / hour) % 4;
    return { direct: [1, 0.8, 0.35, 0][at] ?? 1, visibility: [10_000, 4000, 9999, 1500][at] ?? 10_000 };
  };
  const { worst, lit } = compared(contents, paths, hours(summer, 24), 5, 6, null, skyAt);
  expect(worst).toBeLessThan(1e-6);
  expect(lit).toBeGreaterThan(60);
});

test('[S120] ... south of the equator, beside the antimeridian, with the sun overhead', () => {
  const contents = contentsOf(
    [
      runwayFeature(
        'r',
        [179.99, -16.69],
        [-179.995, -16.68],
        [
          { designator: '08', elevation: 5 },
          { designator: '26', elevation: 5 },
        ],
      ),
    ],
    { subjects: [plainSubject], kit: plainKit, site: { reference: [-179.999, -16.685] } },
  );
  const paths = pathsOf(contents, () => true, null);
  const { worst, lit } = compared(contents, paths, hours(winter, 24), 8, 5);
  expect(worst).toBeLessThan(1e-6);
  expect(lit).toBeGreaterThan(60);
});

test('[S123] where only what is good or best is wanted, that is the same, and where a path is good every instant is', () => {
  const contents = tallTown();
  const paths = pathsOf(contents, (kind, _, end) => kind === 'arrival' || end === 0, null);
  const outlook = outlookOf(contents, wavyGround());
  const area = areaAbout(contents.runways, siteFrame(contents.site.reference), 20, null);
  const instants = hours(summer + 3 * hour, 17);
  const question = { paths, outlook, instants, middle: cellPosition(area, 0) };
  const every = new Kernel({ ...question, everyInstant: true });
  const thrifty = new Kernel({ ...question, everyInstant: false });
  const random = seeded(123);
  const seen = { good: 0, not: 0, spared: 0 };
  for (let k = 0; k < 30; k++) {
    const position = cellPosition(area, Math.floor(random() * area.count * area.count));
    every.at(position, 27);
    thrifty.at(position, 27);
    expect(thrifty.good).toEqual(every.good);
    const best = bestInstant(every.worth);
    expect(bestInstant(thrifty.worth)).toBe(best);
    expect([thrifty.worth[best], thrifty.focal[best], thrifty.bestSample[best]]).toEqual([
      every.worth[best],
      every.focal[best],
      every.bestSample[best],
    ]);
    if (every.good.includes(1)) {
      seen.good++;
      expect(thrifty.worth).toEqual(every.worth);
    } else if (every.worth.some((worth) => worth > 0)) {
      seen.not++;
      thrifty.worth.forEach((worth, t) => expect(worth).toBeLessThanOrEqual(every.worth[t] ?? NaN));
      if (thrifty.worth.some((worth, t) => worth !== every.worth[t])) seen.spared++;
    }
  }
  expect(Math.min(seen.good, seen.not, seen.spared)).toBeGreaterThan(3);
});

test('[S121] a path is good at an instant if some sample without glare has a total of at least 0.6', () => {
  const contents = tallTown();
  const paths = pathsOf(
    contents,
    (kind, runway, end) => kind === 'arrival' && runway === 'long' && end === 1,
    null,
  );
  const terrain = wavyGround();
  const outlook = outlookOf(contents, terrain);
  const area = areaAbout(contents.runways, siteFrame(contents.site.reference), 20, null);
  // A low sun, towards which one looks along the path: glare decides.
  const instants = hours(summer + 4.25 * hour, 4, 4.4 * hour);
  const kernel = new Kernel({ paths, outlook, instants, middle: cellPosition(area, 0), everyInstant: true });
  const random = seeded(8);
  const scratch = new Scratch();
  const said = { good: 0, not: 0, glaring: 0 };
  for (let k = 0; k < 4; k++) {
    const [x, y] = [
      Math.floor((0.3 + 0.4 * random()) * area.count),
      Math.floor((0.42 + 0.16 * random()) * area.count),
    ];
    const position = cellPosition(area, y * area.count + x);
    const spot = spotAt(position);
    const ground = groundAt(
      position,
      contents.runways,
      fieldElevation(contents),
      outlook.around?.terrain ?? null,
    );
    kernel.at(position, ground.elevation + 1.7);
    paths.forEach((path, p) => {
      // Far out nothing is in reach.
      const near = [...path.samples.station].filter((station) => Math.abs(station) < 1200);
      instants.forEach((instant, t) => {
        const samples = near.map((station) => inspectPath(spot, path, station, outlook, instant, scratch));
        const worthIt = samples.filter((s) => s.score.total >= 0.6);
        const good = worthIt.some((s) => !s.glare);
        expect(kernel.good[p * instants.length + t] === 1).toBe(good);
        said[good ? 'good' : 'not']++;
        if (worthIt.some((s) => s.glare)) said.glaring++;
      });
    });
  }
  expect(said.good).toBeGreaterThan(1);
  expect(said.not).toBeGreaterThan(1);
});
