import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { mapped } from '../../src/figures/geometry/earth';
import { spotFigures } from '../../src/figures/spot-figures';
import { groundUnder } from '../../src/figures/sight/ground';
import { readContents } from '../../src/survey/contents';
import type { Position } from '../../src/survey/document';
import { openSurvey } from '../../src/survey/open';
import { spotThere } from '../../src/figures/spot/spot-there';
import { planSweep } from '../../src/sweep/plan';
import { bestInstant, Sweep } from '../../src/sweep/sweep';

const opened = openSurvey(readFileSync('sample-sites/tolverby.geojson', 'utf8'));
if (!opened.ok) throw new Error(opened.reason);
const contents = readContents(opened.survey);
const deck = contents.obstacles.find(({ standOn }) => standOn);
const spot = contents.spots.find(({ name }) => name === 'Car park, top deck');
const planned = planSweep(
  contents,
  {
    side: 500,
    cell: 100,
    hours: { from: Date.UTC(2026, 5, 21, 5), to: Date.UTC(2026, 5, 21, 18) },
    step: 7200,
    names: null,
    wind: null,
    configuration: 0,
    at: Date.UTC(2026, 5, 21, 12),
  },
  null,
);
if (!planned.ok || !deck || !spot) throw new Error('expected a deck, a spot on it and a plan');
const sweep = new Sweep(contents, planned.plan, null);
const { frame } = planned.plan.area;

test('[S199] on the sample site’s deck one stands 1.7 m above its top, as the spot there does, and beside it on the ground', () => {
  const there = sweep.ground.ofPlace(...mapped(frame, spot.position));
  expect(there).toMatchObject({ ground: 'open', closedBy: null, name: deck.name });
  const { elevation, stated } = sweep.groundUnder(spot.position);
  expect(stated).toBe(true);
  const { runways, fieldElevation } = sweep.outlook;
  const ground = groundUnder(spot, runways, fieldElevation, null).elevation;
  // The spot's eyes are said to be 11 m above the ground.
  expect(Math.abs(elevation + 1.7 - (ground + spot.eyeHeight))).toBeLessThan(0.3);
  const beside: Position = [spot.position[0] + 0.001, spot.position[1]];
  expect(sweep.groundUnder(beside).stated).toBe(false);
  expect(elevation - sweep.groundUnder(beside).elevation).toBeGreaterThan(8.5);
});

test('[S199] ... and what is worked out there is what figures give a spot on its top', () => {
  const kernel = sweep.lookFrom(spot.position);
  const { elevation } = sweep.groundUnder(spot.position);
  const { paths, instants } = planned.plan;
  const seen = spotFigures(spotThere(spot.position, elevation), paths, sweep.outlook, instants);
  const totals = seen.map((at) => Math.max(...at.paths.map(({ best }) => best.score.total)));
  const best = bestInstant(kernel.worth);
  expect(kernel.worth[best]).toBeCloseTo(Math.max(...totals), 9);
  expect(Math.max(...totals)).toBeGreaterThan(0.6);
});
