import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { Scratch } from '../../src/figures/scratch';
import { pathsOf, type PathFilter } from '../../src/figures/traffic/paths';
import { dayRows } from '../../src/figures/when/day-rows';
import { sceneDrawer } from '../../src/map/overlays/compose';
import { readContents } from '../../src/survey/contents';
import type { Position, Survey } from '../../src/survey/document';
import { reshapeFeature } from '../../src/survey/edits/reshape-feature';
import { mostSteps, perform, startHistory } from '../../src/survey/history';
import { openSurvey } from '../../src/survey/open';
import { megabytesHeld } from '../support/heap';
import { instants, sceneOf } from '../map/scene';

const opened = openSurvey(readFileSync('sample-sites/tolverby.geojson', 'utf8'));
if (!opened.ok) throw new Error(opened.reason);
const sample = opened.survey;

const allPaths = () => true;
const arrivals: PathFilter = (kind) => kind === 'arrival';

/** What a page computes at a step; now and then its view of the day is open too, which takes longer. */
function looker(): (survey: Survey, i: number) => void {
  const [draw, scratch] = [sceneDrawer(), new Scratch()];
  const hour = 3_600_000;
  const day = { from: instants[0], to: instants[0] + hour };
  return (survey, i) => {
    draw(sceneOf(survey, null, arrivals));
    if (i % 10 !== 0) return;
    const contents = readContents(survey);
    dayRows(contents, pathsOf(contents, arrivals), day, null, scratch);
  };
}

/** MB that history costs after some steps, each of them looked at. */
function heldBySteps(steps: number, step: (survey: Survey, i: number) => Survey): number {
  const look = looker();
  let history = startHistory(sample);
  look(sample, 0);
  const before = megabytesHeld();
  for (let i = 0; i < steps; i++) {
    history = perform(history, 'move', step(history.present, i));
    look(history.present, i);
  }
  const held = megabytesHeld() - before;
  expect(history.past).toHaveLength(steps);
  return held;
}

const moved = ([lng, lat]: Position, i: number): Position => [lng + 1e-6 * (i + 1), lat];
const find = (kind: string) => sample.features.find((f) => f.properties?.['kind'] === kind);

describe('what history holds', () => {
  test('[F705] five hundred moves of a spot would stay under 30 MB: past surveys do not keep their figures', () => {
    const spot = find('standing-spot');
    const from = spot?.geometry?.type === 'Point' ? (spot.geometry.coordinates as Position) : null;
    if (!spot || !from) throw new Error('expected a spot in the sample site');
    const id = String(spot.id);
    const move = (survey: Survey, i: number) =>
      reshapeFeature(survey, id, { type: 'Point', coordinates: moved(from, i) });
    // A fifth of them here; all five hundred are in `npm run bench`.
    expect(heldBySteps(mostSteps / 5, move)).toBeLessThan(30 / 5);
  });

  test('[F706] the same where a runway moves, which every path of it follows', () => {
    const runway = find('runway');
    const line = runway?.geometry?.type === 'LineString' ? (runway.geometry.coordinates as Position[]) : null;
    if (!runway || !line) throw new Error('expected a runway in the sample site');
    const id = String(runway.id);
    const move = (survey: Survey, i: number) =>
      reshapeFeature(survey, id, { type: 'LineString', coordinates: line.map((at) => moved(at, i)) });
    expect(heldBySteps(mostSteps / 10, move)).toBeLessThan(30 / 10);
  });

  test('[F707] a movement of another type leaves the paths of the current one as they are', () => {
    const contents = readContents(sample);
    const before = pathsOf(contents, allPaths);
    const other = contents.subjects.find((subject) => subject !== contents.subject);
    if (!other) throw new Error('expected two subjects in the sample site');
    const others = pathsOf({ ...contents, subject: other }, (kind) => kind === 'arrival');
    expect(others[0]).not.toBe(before[0]);
    const after = pathsOf(contents, allPaths);
    expect(after.every((path, i) => path === before[i])).toBe(true);
    expect(pathsOf({ ...contents, subject: other }, (kind) => kind === 'arrival')[0]).toBe(others[0]);
  });
});
