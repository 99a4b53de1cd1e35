import type { Contents } from '../../survey/contents';
import { Memo } from '../../survey/memo';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { yearGrid, yearOf, type YearGrid } from '../../time/year-grid';
import { alwaysClear } from '../light/sky';
import { Scratch } from '../scratch';
import type { ElevationGrid } from '../sight/terrain';
import { outlookOf, type Outlook } from '../outlook';
import { viewsByMonth } from './still-views';
import type { Path } from '../traffic/paths';
import { frontLitByHour, frontLitByMonth } from './front-lit-hours';
import { emptyRow, entryOf, fillRow, type LightEntry, type LightRow } from './light-row';

/** Minutes of the clock that one row of the year stands for. */
const yearStepMinutes = 15;

/** A year of light for one spot and path, by date and time of the clock. */
export interface YearLight {
  readonly grid: YearGrid;
  readonly light: LightRow;
  /** What is to be said of one entry of `light`; null for a time that the clocks skip. */
  readonly entryAt: (index: number) => LightEntry | null;
  /** Share of each hour that is front-lit, [month * 24 + hour], and hours a day in each month. */
  readonly frontLitByHour: Float64Array;
  readonly frontLitByMonth: readonly number[];
}

/** A year by the clock of a zone under clear skies, leaves as they are in each month. */
export function yearOfLight(
  spot: StandingSpot,
  path: Path,
  outlook: Outlook,
  year: number,
  timeZone: string,
  scratch: Scratch = new Scratch(),
): YearLight {
  const grid = yearGrid(year, timeZone, yearStepMinutes);
  const light = emptyRow(grid.instants.length);
  viewsByMonth(spot, path, { ...outlook, skyAt: alwaysClear }, scratch).forEach((view, month) => {
    const from = (grid.months[month] as number) * grid.rows;
    const to = (grid.months[month + 1] ?? grid.dates.length) * grid.rows;
    fillRow(light, view, spot.position, grid.instants, from, to);
  });
  const byHour = frontLitByHour(light, grid.dates, grid.rows);
  return {
    grid,
    light,
    entryAt: (index) => entryOf(light, index),
    frontLitByHour: byHour,
    frontLitByMonth: frontLitByMonth(byHour),
  };
}

/** 0.4 MB each; a record of winds asks for the paths of every end in use. */
const kept = new Memo<YearLight>({ each: 4 });

/** The year that a date is in, computed only when something has changed for the spot and path. */
export function yearLight(
  contents: Contents,
  spot: StandingSpot,
  path: Path,
  date: string,
  timeZone: string,
  terrain: ElevationGrid | null,
  scratch: Scratch = new Scratch(),
): YearLight {
  const outlook = outlookOf(contents, terrain);
  const year = yearOf(date);
  kept.keepOnly(contents.spots);
  return kept.get([spot, path, outlook, year, timeZone], () =>
    yearOfLight(spot, path, outlook, year, timeZone, scratch),
  );
}
