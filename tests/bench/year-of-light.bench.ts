import { readContents } from '../../src/survey/contents';
import { outlookOf } from '../../src/figures/outlook';
import { SunTrack } from '../../src/figures/light/sun-track';
import { totalAt } from '../../src/figures/when/best-light';
import type { StillView } from '../../src/figures/when/still-view';
import type { Position } from '../../src/survey/document';
import { stillViewsOf } from '../../src/figures/when/still-views';
import { pathsOf } from '../../src/figures/traffic/paths';
import { lightRow } from '../../src/figures/when/light-row';
import { yearGrid } from '../../src/time/year-grid';
import { busySurvey } from './busy-survey.ts';
import { measure, row } from './measure.ts';

/** A year of light for one spot and path (365 x 96), and a day's strip row: the spot moved, everything anew. */
export function yearOfLight(): void {
  const contents = readContents(busySurvey());
  const paths = pathsOf(contents, (kind) => kind === 'arrival' || kind === 'departure', null);
  const outlook = outlookOf(contents, null);
  const { instants } = yearGrid(2026, 'Europe/London', 15);
  const day = instants.slice(172 * 96, 173 * 96);
  const of = (i: number) => {
    const spot = contents.spots[i % contents.spots.length];
    const path = paths[i % paths.length];
    if (!spot || !path) throw new Error('expected spots and paths');
    return { spot, path };
  };
  const year = measure(60, (i) => {
    const { spot, path } = of(i);
    const [view] = stillViewsOf(spot, [path], outlook, 0);
    if (view) lightRow(view, spot.position, instants);
  });
  const oneDay = measure(400, (i) => {
    const { spot, path } = of(i);
    const [view] = stillViewsOf(spot, [path], outlook, 0);
    if (view) lightRow(view, spot.position, day);
  });
  // The same with every sample under every sun, as one would write it first.
  const plain = measure(2, (i) => {
    const { spot, path } = of(i);
    const [view] = stillViewsOf(spot, [path], outlook, 0);
    if (view) everySample(view, spot.position, instants);
  });
  console.log('light over time (one spot and path)');
  row('a year, every sample', plain);
  row('a year, 365 x 96', year, { budget: 20, plain: ['every sample', plain] });
  row('a day, 96', oneDay);
}

function everySample(view: StillView, position: Position, instants: Float64Array): number {
  const track = new SunTrack(position);
  let sum = 0;
  for (const instant of instants) {
    const sun = track.at(instant);
    let best = 0;
    for (let i = 0; i < view.count; i++) best = Math.max(best, totalAt(view, i, sun));
    sum += best;
  }
  return sum;
}
