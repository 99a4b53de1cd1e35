import { describe, expect, test } from 'vitest';
import { scoreWord } from '../../../src/figures/score-words';
import { frontLitByHour, frontLitByMonth } from '../../../src/figures/when/front-lit-hours';
import {
  lightCodes,
  lightRow,
  lightRuns,
  noLight,
  readRow,
  worthOf,
} from '../../../src/figures/when/light-row';
import { yearLight } from '../../../src/figures/when/year-light';
import { clockOf } from '../../../src/time/year-grid';
import { pathsOf } from '../../../src/figures/traffic/paths';
import {
  contentsOf,
  feature,
  plainKit,
  plainSubject,
  runwayFeature,
  spotFeature,
} from '../../support/contents';
import { fieldAt } from './field';

describe('a year of light', () => {
  test.each([
    ['north', [8.5, 47.4], 'Europe/Zurich'],
    ['south', [151.1772, -33.9461], 'Australia/Sydney'],
    ['at 70 degrees north', [18.91, 69.68], 'Europe/Oslo'],
  ] as const)('[F247] has in every cell the light of that wall-clock time, %s', (_, place, zone) => {
    const field = fieldAt(place, 200, 230, { timeZone: zone });
    const { grid, light } = yearLight(field.contents, field.spot, field.path, '2026-06-21', zone, null);
    expect(light.light).toHaveLength(365 * 96);
    const skipped = [...light.light.keys()].filter((i) => light.light[i] === noLight);
    expect(skipped).toHaveLength(4);
    let differ = 0;
    // A step that meets every quarter of an hour and every month.
    for (let i = 11; i < light.light.length; i += 397) {
      const instant = grid.instants[i] as number;
      if (Number.isNaN(instant)) continue;
      const best = field.at(instant).paths[0]?.best;
      // On the very edge of a class the two suns, 0.001 degrees apart, may disagree.
      if (lightCodes[light.light[i] as number] !== best?.light || (light.glare[i] === 1) !== best?.glare)
        differ++;
      else expect(light.total[i]).toBeCloseTo(best?.score.total ?? NaN, 3);
    }
    expect(differ).toBeLessThanOrEqual(1);
  });

  test('[F248] counts the front-lit hours of each month: against the row, cell by cell', () => {
    const field = fieldAt([8.5, 47.4], 200, 230, { timeZone: 'Europe/Zurich' });
    const [view] = field.views;
    if (!view) throw new Error('expected a path');
    const {
      grid,
      light,
      frontLitByMonth: months,
    } = yearLight(field.contents, field.spot, field.path, '2026-01-01', 'Europe/Zurich', null);
    const front = lightCodes.indexOf('front-lit');
    for (const [month, days] of [
      [2, 28],
      [6, 30],
      [12, 31],
    ] as const) {
      let cells = 0;
      grid.dates.forEach((date, d) => {
        if (Number(date.split('-')[1]) !== month) return;
        for (let r = 0; r < 96; r++) {
          const i = d * 96 + r;
          if (light.light[i] === front && light.glare[i] === 0) cells++;
        }
      });
      expect(cells).toBeGreaterThan(0);
      expect(months[month - 1]).toBeCloseTo(cells / 4 / days, 9);
    }
  });

  test('[F248] puts each share into its hour of the clock', () => {
    const dates = ['2026-03-01', '2026-03-02'];
    const of = (...lit: readonly number[]) => {
      const light = new Uint8Array(2 * 96);
      for (const i of lit) light[i] = lightCodes.indexOf('front-lit');
      const none = new Uint8Array(2 * 96);
      return {
        light,
        glare: none,
        flat: none,
        blocked: none,
        total: new Float32Array(2 * 96),
        best: new Uint32Array(2 * 96),
      };
    };
    // 07:15 on the first, 07:30 on the second, 23:45 on the second.
    const byHour = frontLitByHour(of(29, 96 + 30, 96 + 95), dates, 96);
    expect([...byHour.keys()].filter((at) => byHour[at] !== 0)).toEqual([2 * 24 + 7, 2 * 24 + 23]);
    expect([byHour[2 * 24 + 7], byHour[2 * 24 + 23]]).toEqual([0.25, 0.125]);
    expect(frontLitByMonth(byHour)).toEqual([0, 0, 0.375, 0, 0, 0, 0, 0, 0, 0, 0, 0]);
  });

  test('[F249] a row cut into runs loses nothing, and reads as one moment does', () => {
    const field = fieldAt([8.5, 47.4], 200, -230);
    const [view] = field.views;
    if (!view) throw new Error('expected a path');
    const day = Date.parse('2026-05-03T00:00:00Z');
    const instants = Float64Array.from({ length: 288 }, (_, i) => day + (i + 0.5) * 300_000);
    const row = lightRow(view, field.spot.position, instants);
    const runs = lightRuns(row);
    expect(runs[0]?.from).toBe(0);
    expect(runs.at(-1)?.to).toBe(288);
    runs.forEach((run, k) => {
      if (k > 0) expect(run.from).toBe(runs[k - 1]?.to);
      for (let i = run.from; i < run.to; i++)
        expect([lightCodes[row.light[i] as number], row.glare[i] === 1]).toEqual([run.light, run.glare]);
      for (let i = run.from; i < run.to; i++) expect(scoreWord(row.total[i] as number)).toBe(run.worth);
    });
    const reading = readRow(view, field.spot.position, instants[150] as number);
    expect(reading.score.total).toBeCloseTo(row.total[150] as number, 6);
    const sum = row.total.reduce((a, b) => a + b, 0) / 12;
    expect(worthOf(row, 300_000)).toBeCloseTo(sum, 4);
    expect(clockOf(150 * 5)).toBe('12:30');
  });

  test('[F250] hides behind leaves only in their months', () => {
    // A wood along the whole north side of the spot, 20 m high, in leaf from May to October.
    const wood = feature(
      'wood',
      'obstacle',
      'LineString',
      [
        [8.49, 47.3985],
        [8.53, 47.3985],
      ],
      {
        height: 60,
        sight: 'leaf',
        leafMonths: [5, 6, 7, 8, 9, 10],
      },
    );
    const contents = contentsOf(
      [
        runwayFeature('rwy', [8.5, 47.4], [8.52, 47.4], [{ designator: '09' }, { designator: '27' }]),
        spotFeature('spot', [8.51, 47.398]),
        wood,
      ],
      { site: { elevation: 430, timeZone: 'Europe/Zurich' }, subjects: [plainSubject], kit: plainKit },
    );
    const [spot] = contents.spots;
    const [path] = pathsOf(contents, (kind) => kind === 'departure', null);
    if (!spot || !path) throw new Error('expected a spot and a path');
    const { grid, light } = yearLight(contents, spot, path, '2026-01-01', 'Europe/Zurich', null);
    const noon = (date: string) => light.total[grid.dates.indexOf(date) * 96 + 48] as number;
    // Over the wood and past it something of the climb stays in sight, far away.
    expect(noon('2026-05-01')).toBeLessThan(0.5 * noon('2026-04-30'));
    expect(noon('2026-10-31')).toBeLessThan(0.5 * noon('2026-11-01'));
    expect(Math.abs(noon('2026-07-01') - noon('2026-06-30'))).toBeLessThan(0.01);
  });
});
