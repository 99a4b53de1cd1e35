import { lightCodes, type LightRow } from './light-row';

const frontLit = lightCodes.indexOf('front-lit');

/**
 * Share of each hour of the clock (0 to 1, at [month * 24 + hour]) in which a year's row is front-lit, in sight and
 * without glare: the mean over the days of the month. `dates`: "2026-01-01" and on, one a column of the row's grid;
 * `rows`: entries a date.
 */
export function frontLitByHour(row: LightRow, dates: readonly string[], rows: number): Float64Array {
  const lit = new Float64Array(12 * 24);
  const days = new Float64Array(12);
  dates.forEach((date, d) => {
    const month = Number(date.slice(5, 7)) - 1;
    days[month] = (days[month] as number) + 1;
    for (let r = 0; r < rows; r++) {
      const i = d * rows + r;
      if (row.light[i] !== frontLit || row.glare[i] === 1 || row.blocked[i] === 1) continue;
      const at = month * 24 + Math.floor((r * 24) / rows);
      lit[at] = (lit[at] as number) + 24 / rows;
    }
  });
  return lit.map((hours, at) => {
    const of = days[Math.floor(at / 24)] as number;
    return of > 0 ? hours / of : 0;
  });
}

/** Hours a day, the mean of each of the twelve months. */
export const frontLitByMonth = (byHour: Float64Array): number[] =>
  Array.from({ length: 12 }, (_, month) =>
    byHour.subarray(month * 24, month * 24 + 24).reduce((sum, share) => sum + share, 0),
  );
