import type { Position } from '../../src/survey/document';
import { readContents } from '../../src/survey/contents';
import { reshapeFeature } from '../../src/survey/edits/reshape-feature';
import { Scratch } from '../../src/figures/scratch';
import { pathsOf } from '../../src/figures/traffic/paths';
import { sceneDrawer } from '../../src/map/overlays/compose';
import { instants, sceneOf } from '../map/scene';
import { builtUpSurvey, wavyGround } from './built-up-survey.ts';
import { busySurvey } from './busy-survey.ts';
import { youngCollections } from './collections.ts';
import { measure, row } from './measure.ts';
import { naiveTurf } from './naive-turf.ts';

const budget = 1;
const dragged = 'spot3';

/**
 * One pointer move while a spot is dragged: four ends, arrivals and departures, ten spots with their rings, two
 * moments. First the figures alone, then figures and overlays, and beside them a naive way with Turf; then how often garbage is
 * collected, which does not hang on what else the machine does.
 */
export async function dragSpot(): Promise<void> {
  // As the page does: what is worked in is kept from one move to the next.
  const scratch = new Scratch();
  let survey = busySurvey();
  const at = (i: number): Position => [-0.48 + 0.00003 * (i % 700), 51.473 + 0.001 * Math.sin(i)];
  const move = (i: number) => {
    survey = reshapeFeature(survey, dragged, { type: 'Point', coordinates: at(i) });
    return {
      ...sceneOf(survey, dragged, (kind) => kind === 'arrival' || kind === 'departure', null, scratch),
      dragging: true,
    };
  };
  const figures = measure(1000, (i) => void move(i));
  const draw = sceneDrawer();
  const all = measure(1000, (i) => void draw(move(i)));
  const young = await youngCollections(1000, (i) => void draw(move(i)));
  const contents = readContents(survey);
  const paths = pathsOf(contents, (kind) => kind === 'arrival' || kind === 'departure', null);
  const samples = paths.reduce((sum, path) => sum + path.samples.count, 0);
  const turf = measure(30, (i) => void naiveTurf(at(i), paths, contents, instants));
  console.log(`drag a spot (${paths.length} paths, ${samples} samples, two moments)`);
  row('figures, naive Turf', turf);
  row('figures', figures, { plain: ['naive Turf', turf] });
  row('figures and overlays', all, { budget, budgetP95: 2 });
  const ground = wavyGround();
  let built = builtUpSurvey();
  const drawBuilt = sceneDrawer();
  const moveBuilt = (i: number) => {
    built = reshapeFeature(built, dragged, { type: 'Point', coordinates: at(i) });
    drawBuilt({ ...sceneOf(built, dragged, (kind) => kind !== 'circuit', ground, scratch), dragging: true });
  };
  row('500 obstacles, terrain', measure(500, moveBuilt), { budget: 3 });
  const youngBuilt = await youngCollections(1000, moveBuilt);
  console.log(
    `  collections of the young generation in 1,000 moves: ${young}, among obstacles ${youngBuilt}`,
  );
}
