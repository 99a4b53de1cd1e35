import { beforeAll, describe, expect, it } from 'vitest';
import { wrap360 } from '../../src/figures/geometry/angles';
import {
  designatorNumber,
  designatorsApart,
  suggestedDesignator,
} from '../../src/figures/geometry/designator';
import { groundLine } from '../../src/figures/geometry/earth';
import { declination } from '../../src/figures/geometry/magnetic';
import { isLocated, type LocatedRunway } from '../../src/imports/catalogue/doubts';
import type { RunwayFlag } from '../../src/imports/catalogue/types';
import { everyAirfield, realCatalogue, type WholeAirfield } from '../support/catalogue';

/** Summer of the model's second year (WMM2025); the data are of February of the same year. */
const instant = Date.UTC(2026, 5, 15);

/**
 * Located runways of the data package 0.2.1: 13,285 with two ends, without 380 of closed airfields, 12 whose ends
 * are one point and 1 of an airfield entered twice. A dropped row fails; a new version is counted anew.
 */
const locatedRows = 12_892;
const soundRows = 11_752;
const flaggedRows = 212;

interface End {
  readonly designator: string;
  readonly suggested: string;
  readonly apart: number | null;
  readonly apartFromTrue: number | null;
}
interface Row {
  readonly airfield: WholeAirfield;
  readonly runway: LocatedRunway;
  readonly ends: readonly [End, End];
}

/** Rows that contradict themselves before anybody looks at their designators. */
const dataChecks: readonly RunwayFlag['kind'][] = ['zero-length', 'far-away', 'length-off', 'at-thresholds'];
const isSound = ({ runway }: Row) => !runway.flags.some((flag) => dataChecks.includes(flag.kind));

function rowOf(airfield: WholeAirfield, runway: LocatedRunway): Row {
  const [a, b] = runway.ends;
  const variation = declination(a.position, airfield.elevation, instant);
  const end = (i: 0 | 1): End => {
    const azimuth =
      groundLine(runway.ends[i].position, i === 0 ? b.position : a.position).azimuth ?? Number.NaN;
    const { designator } = runway.ends[i];
    const suggested = suggestedDesignator(wrap360(azimuth - variation));
    return {
      designator,
      suggested,
      apart: designatorsApart(designator, suggested),
      apartFromTrue: designatorsApart(designator, suggestedDesignator(azimuth)),
    };
  };
  return { airfield, runway, ends: [end(0), end(1)] };
}

/** Why a published number is not the suggested one or its neighbour; the first that fits. */
function causeOf(row: Row, end: End): string {
  const [a, b] = row.ends;
  const { apart, apartFromTrue } = end;
  if (apart === null) return 'no number from 01 to 36 (water runways N/S, helipads)';
  if (apart <= 1) return '';
  if (/\dT$/.test(end.designator) && (apartFromTrue ?? 9) <= 1)
    return 'marked as counted from true north (16T)';
  if (designatorsApart(a.designator, b.designator) !== 18)
    return 'the two numbers are not 18 apart: one is mistyped';
  if (row.runway.flags.some((flag) => flag.kind === 'ends-swapped'))
    return 'ends swapped: heading and number against the line';
  if (apart >= 15) return 'opposite number, published heading along the line';
  if (Math.abs(row.airfield.position[1]) >= 60 && (apartFromTrue ?? 9) <= 1)
    return 'north of 60: fits the true azimuth';
  if (apart <= 3 && (apartFromTrue ?? 9) <= 1) return 'two or three off, within one of the true azimuth';
  return apart <= 3 ? 'two or three off' : 'four or more off';
}

const percent = (part: number, whole: number) => `${((100 * part) / whole).toFixed(2)} %`;

describe('suggested designators against published ones, over the whole catalogue', () => {
  let rows: Row[] = [];

  beforeAll(async () => {
    rows = everyAirfield(await realCatalogue()).flatMap((airfield) =>
      airfield.runways.filter(isLocated).map((runway) => rowOf(airfield, runway)),
    );
  }, 60_000);

  it('[R-designator] takes every located runway of the data', () => {
    expect(rows).toHaveLength(locatedRows);
    expect(rows.filter(isSound)).toHaveLength(soundRows);
  });

  it('[R-designator] more than 98 % within one where the row passes the data checks', () => {
    const sound = rows.filter(isSound);
    const ends = sound.flatMap((row) => row.ends.map((end) => ({ end, cause: causeOf(row, end) })));
    const numbered = ends.filter(({ end }) => end.apart !== null);
    const exact = numbered.filter(({ end }) => end.apart === 0).length;
    const withinOne = numbered.filter(({ end }) => end.apart !== null && end.apart <= 1).length;
    const exactFromTrue = numbered.filter(({ end }) => end.apartFromTrue === 0).length;
    const causes = new Map<string, number>();
    for (const { cause } of ends) if (cause !== '') causes.set(cause, (causes.get(cause) ?? 0) + 1);
    console.log(
      [
        `Designators: ${rows.length} located runways, ${rows.length - sound.length} fail the data checks, ${numbered.length} numbered ends compared`,
        `  exactly as published  ${exact}  ${percent(exact, numbered.length)}`,
        `  within one            ${withinOne}  ${percent(withinOne, numbered.length)}`,
        `  exactly, if declination were left out  ${percent(exactFromTrue, numbered.length)}`,
        ...[...causes]
          .sort((a, b) => b[1] - a[1])
          .map(([cause, count]) => `  ${String(count).padStart(5)}  ${cause}`),
      ].join('\n'),
    );
    expect(withinOne / numbered.length).toBeGreaterThan(0.98);
    expect(exact / numbered.length).toBeGreaterThan(0.69);
    // Declination of the wrong sign, or none, would be found out here.
    expect(exact).toBeGreaterThan(1.5 * exactFromTrue);
    // Every end is either within one or has its cause.
    expect(withinOne + [...causes.values()].reduce((sum, n) => sum + n, 0)).toBe(ends.length);
  });

  it('[R-designator] what the catalogue flags is what does not fit, and nothing else', () => {
    const flagged = (row: Row) =>
      row.runway.flags.some((flag) => flag.kind === 'designator-off' || flag.kind === 'ends-swapped');
    const fits = (row: Row) =>
      row.ends.every((end) => end.apart === null || end.apart <= 1) ||
      row.ends.some((end) => designatorNumber(end.designator) === null);
    const unlike = rows.filter((row) => flagged(row) === fits(row));
    // What is numbered from true north does not fit the magnetic bearing and is no fault of the data.
    expect(unlike.filter((row) => row.ends.some((end) => (end.apartFromTrue ?? 9) > 1))).toEqual([]);
    expect(unlike.length).toBeLessThan(30);
    expect(rows.filter(flagged).length).toBe(flaggedRows);
  });
});
