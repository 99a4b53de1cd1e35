import { readContents } from '../../src/survey/contents';
import { outlookOf } from '../../src/figures/outlook';
import { stillViewsOf } from '../../src/figures/when/still-views';
import { pathsOf } from '../../src/figures/traffic/paths';
import { lightRow } from '../../src/figures/when/light-row';
import { yearGrid } from '../../src/time/year-grid';
import { busySurvey } from './busy-survey.ts';
import { measure, printed } from './measure.ts';

/** A year of light for one spot and path (365 x 96), and a day's strip row: the spot moved, everything anew. */
export function yearOfLight(): void {
  const contents = readContents(busySurvey());
  const paths = pathsOf(contents, (kind) => kind === 'arrival' || kind === 'departure');
  const outlook = outlookOf(contents);
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
  const row = measure(400, (i) => {
    const { spot, path } = of(i);
    const [view] = stillViewsOf(spot, [path], outlook, 0);
    if (view) lightRow(view, spot.position, day);
  });
  console.log('light over time (one spot and path; budget of the year 50 ms)');
  console.log(`  a year, 365 x 96      ${printed(year)}`);
  console.log(`  a day, 96             ${printed(row)}`);
}
