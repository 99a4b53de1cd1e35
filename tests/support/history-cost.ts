import { readFileSync } from 'node:fs';
import { Scratch } from '../../src/figures/scratch';
import { pathsOf, type PathFilter } from '../../src/figures/traffic/paths';
import { dayRows } from '../../src/figures/when/day-rows';
import { sceneDrawer } from '../../src/map/overlays/compose';
import { readContents } from '../../src/survey/contents';
import type { Position, Survey } from '../../src/survey/document';
import { reshapeFeature } from '../../src/survey/edits/reshape-feature';
import { perform, startHistory } from '../../src/survey/history';
import { openSurvey } from '../../src/survey/open';
import { instants, sceneOf } from '../map/scene';
import { megabytesHeld } from './heap.ts';

const opened = openSurvey(readFileSync('sample-sites/tolverby.geojson', 'utf8'));
if (!opened.ok) throw new Error(opened.reason);
export const sample = opened.survey;

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
    dayRows(contents, pathsOf(contents, arrivals, null), day, null, scratch);
  };
}

/** A step of a feature of the sample site: the first standing spot, or the first runway, is moved a little further. */
function mover(kind: 'standing-spot' | 'runway'): (survey: Survey, i: number) => Survey {
  const moved = ([lng, lat]: Position, i: number): Position => [lng + 1e-6 * (i + 1), lat];
  const found = sample.features.find((f) => f.properties?.['kind'] === kind);
  const id = String(found?.id);
  const geometry = found?.geometry;
  if (geometry?.type === 'Point') {
    const from = geometry.coordinates as Position;
    return (survey, i) => reshapeFeature(survey, id, { type: 'Point', coordinates: moved(from, i) });
  }
  if (geometry?.type !== 'LineString') throw new Error(`expected a ${kind} in the sample site`);
  const line = geometry.coordinates as Position[];
  return (survey, i) =>
    reshapeFeature(survey, id, { type: 'LineString', coordinates: line.map((at) => moved(at, i)) });
}

/** MB that history costs after some steps of the sample site, each of them looked at. */
export function heldBySteps(steps: number, kind: 'standing-spot' | 'runway'): number {
  const [look, step] = [looker(), mover(kind)];
  let history = startHistory(sample);
  look(sample, 0);
  const before = megabytesHeld();
  for (let i = 0; i < steps; i++) {
    history = perform(history, 'move', step(history.present, i));
    look(history.present, i);
  }
  const held = megabytesHeld() - before;
  if (history.past.length !== steps) throw new Error(`expected ${steps} steps, got ${history.past.length}`);
  return held;
}
