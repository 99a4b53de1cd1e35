import type { Position } from '../../survey/document';
import { yearGrid, yearOf, type YearGrid } from '../../time/year-grid';
import { remembered } from '../remembered';
import { frontLitByHour, frontLitByMonth } from './front-lit-hours';
import type { LightClass } from '../types';
import { lightCodes, lightRow, type LightRow } from './light-row';
import type { StillView } from './still-view';

/** Minutes of the clock that one row of the year stands for. */
export const yearStepMinutes = 15;

/** A year of light for one spot and path, by date and time of the clock. */
export interface YearLight {
  readonly grid: YearGrid;
  readonly light: LightRow;
  /** The classes that the numbers of `light` stand for. */
  readonly names: readonly LightClass[];
  /** Share of each hour that is front-lit, [month * 24 + hour], and hours a day in each month. */
  readonly frontLitByHour: Float64Array;
  readonly frontLitByMonth: readonly number[];
}

const rememberedYear = remembered(
  (view: StillView, position: Position, year: number, timeZone: string): YearLight => {
    const grid = yearGrid(year, timeZone, yearStepMinutes);
    const light = lightRow(view, position, grid.instants);
    const byHour = frontLitByHour(light, grid.dates, grid.rows);
    return {
      grid,
      light,
      names: lightCodes,
      frontLitByHour: byHour,
      frontLitByMonth: frontLitByMonth(byHour),
    };
  },
);

/** The year that a date is in. */
export const yearLight = (view: StillView, position: Position, date: string, timeZone: string): YearLight =>
  rememberedYear(view, position, yearOf(date), timeZone);
