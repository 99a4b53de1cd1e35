import { describe, expect, test } from 'vitest';
import { windComponents } from '../../src/figures/traffic/wind/components';
import { readMetar } from '../../src/figures/traffic/wind/metar';
import { readTaf } from '../../src/figures/traffic/wind/taf';
import { fromMagnetic } from '../../src/figures/traffic/wind/wind';
import { readWindGroup } from '../../src/figures/traffic/wind/wind-group';
import { PublishedTable } from '../support/tolerance';
import {
  computedRows,
  computedSource,
  groupRows,
  magneticCase,
  metarRows,
  publishedRows,
  publishedSource,
  tafRows,
  type ComponentRow,
} from './fixtures/wind';
import { tolerances } from './tolerances';

/** The day before the solstice, noon: reports that tell only a day of the month are of the month before it. */
const now = Date.parse('2026-06-20T12:00:00Z');

function check(table: PublishedTable<'head' | 'cross'>, rows: readonly ComponentRow[]) {
  for (const { what, runway, wind, kt, head, cross } of rows) {
    table.row(what);
    const parts = windComponents(wind, kt, runway);
    if (head !== null) table.near('head', parts?.headwindKt ?? NaN, head);
    if (cross !== null) table.near('cross', parts?.crosswindKt ?? NaN, cross);
  }
}

const windOf = (group: string) => {
  const read = readWindGroup(group);
  if (!read.ok) throw new Error(read.reason);
  return read.value;
};

describe('wind on a runway against published answers', () => {
  test('[R76] head- and crosswind, from the right positive', () => {
    const { windPublished, windComputed } = tolerances;
    const published = new PublishedTable(`wind components (${publishedSource})`, {
      head: windPublished,
      cross: windPublished,
    });
    check(published, publishedRows);
    published.close(7);
    const computed = new PublishedTable(`wind components (${computedSource})`, {
      head: windComputed,
      cross: windComputed,
    });
    check(computed, computedRows);
    computed.close(10);
  });

  test('[R77] a true wind on a magnetic runway: both are brought into one reference', () => {
    const { declination, magneticBearing, group, magneticWind, head, cross } = magneticCase;
    const trueWind = windOf(group);
    const trueBearing = magneticBearing + declination;
    const table = new PublishedTable('METAR wind on a magnetic runway (World Magnetic Model)', {
      head: tolerances.windComputed,
      cross: tolerances.windComputed,
      back: tolerances.windDirection,
    });
    table.row('New York');
    const parts = windComponents(trueWind.from, trueWind.speedKt, trueBearing);
    table.near('head', parts?.headwindKt ?? NaN, head);
    table.near('cross', parts?.crosswindKt ?? NaN, cross);
    // What the tower would say of it, told back as magnetic, is the same wind.
    const told = fromMagnetic({ ...trueWind, from: magneticWind }, declination);
    table.near('back', told.from ?? NaN, 240);
    table.close(1);
  });

  test('[R78] wind groups', () => {
    const table = new PublishedTable('wind groups (FAA AIM 7-1, WMO No. 306, ICAO Annex 3)', {
      speed: tolerances.windUnits,
      gust: tolerances.windUnits,
    });
    for (const { group, from, kt, gust } of groupRows) {
      table.row(group);
      const wind = windOf(group);
      expect(wind.from, group).toBe(from);
      table.near('speed', wind.speedKt, kt);
      expect(wind.gustKt === null, group).toBe(gust === null);
      if (gust !== null) table.near('gust', wind.gustKt ?? NaN, gust);
    }
    table.close(9);
  });

  test('[R79] whole METARs: station, time and wind', () => {
    const table = new PublishedTable('METARs (FAA AIM 7-1, ICAO Annex 3)', { speed: tolerances.windUnits });
    for (const row of metarRows) {
      table.row(row.source);
      const read = readMetar(row.report, now);
      if (!read.ok) throw new Error(read.reason);
      const { station, observed, wind, remarks } = read.value;
      expect({ station, observed, remarks }).toEqual({
        station: row.station,
        observed: Date.parse(row.observed),
        remarks: [],
      });
      expect([wind.from, wind.gustKt, wind.varies]).toEqual([row.from, row.gust, row.varies]);
      table.near('speed', wind.speedKt, row.kt);
    }
    table.close(3);
  });

  test('[R80] whole TAFs: from when which wind holds', () => {
    const table = new PublishedTable('TAFs (ICAO Annex 3, FAA AIM 7-1)', { speed: tolerances.windUnits });
    for (const row of tafRows) {
      table.row(row.source);
      const read = readTaf(row.report, now);
      if (!read.ok) throw new Error(read.reason);
      const { from, to, winds, remarks } = read.value;
      expect([from, to, remarks]).toEqual([Date.parse(row.from), Date.parse(row.to), []]);
      expect(winds.map((w) => [w.from, w.likelihood, w.wind.from])).toEqual(
        row.winds.map(([at, likelihood, direction]) => [Date.parse(at), likelihood, direction]),
      );
      winds.forEach(({ wind }, i) => {
        table.near('speed', wind.speedKt, row.winds[i]?.[3] ?? NaN);
        if (wind.gustKt !== null) table.near('speed', wind.gustKt, row.winds[i]?.[4] ?? NaN);
      });
    }
    table.close(2);
  });
});
