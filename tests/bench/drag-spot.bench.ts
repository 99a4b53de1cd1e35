import type { Position } from '../../src/survey/document';
import { readContents } from '../../src/survey/contents';
import { reshapeFeature } from '../../src/survey/edits/reshape-feature';
import { allSpotFigures, focalLengthsAlong } from '../../src/figures/spot-figures';
import { pathsOf } from '../../src/figures/traffic/paths';
import { busySurvey } from './busy-survey.ts';
import { measure, printed } from './measure.ts';
import { naiveTurf } from './naive-turf.ts';

const budget = 1;

/** One pointer move while a spot is dragged: four ends, arrivals and departures, ten spots, two moments. */
export function dragSpot(): void {
  let survey = busySurvey();
  const spot = 'spot3';
  const at = (i: number): Position => [-0.48 + 0.00003 * (i % 700), 51.473 + 0.001 * Math.sin(i)];
  for (const [when, instants] of Object.entries({
    'morning and evening': ['2026-06-21T07:00:00Z', '2026-06-21T17:00:00Z'],
    'noon and dusk': ['2026-06-21T12:00:00Z', '2026-06-21T20:40:00Z'],
  })) {
    const moments = instants.map((text) => Date.parse(text));
    const ours = measure(1200, (i) => {
      survey = reshapeFeature(survey, spot, { type: 'Point', coordinates: at(i) });
      const contents = readContents(survey);
      const paths = pathsOf(contents, (kind) => kind !== 'circuit');
      const figures = allSpotFigures(contents, paths, moments);
      const dragged = figures[contents.spots.findIndex((s) => s.id === spot)]?.[0];
      paths.map((path, k) => focalLengthsAlong(path, dragged?.paths[k]));
    });
    const contents = readContents(survey);
    const paths = pathsOf(contents, (kind) => kind !== 'circuit');
    const samples = paths.reduce((sum, path) => sum + path.samples.count, 0);
    const turf = measure(30, (i) => void naiveTurf(at(i), paths, contents, moments));
    console.log(
      `drag a spot, figures, ${when} (${paths.length} paths, ${samples} samples, budget ${budget} ms)`,
    );
    console.log(`  ours       ${printed(ours)}`);
    console.log(`  naive Turf ${printed(turf)}`);
    console.log(`  ratio      ${(turf.median / ours.median).toFixed(0)} x`);
  }
}
