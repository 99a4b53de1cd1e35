import { describe, expect, test } from 'vitest';
import { coverIn } from '../../../src/imports/wind-record/cover';
import { recordLayout, readRecord, type RecordLayout } from '../../../src/imports/wind-record/read-record';
import { cellOf, variableDirection } from '../../../src/survey/schema/wind-record';
import { once } from '../../support/once';

/** Reads to the end, and says into how many steps it was cut and what share the longest had. */
function read(text: string, change: Partial<RecordLayout> = {}, zone = 'UTC') {
  const layout = { ...recordLayout(text), ...change } as RecordLayout;
  if (layout.unit === null) throw new Error('expected a unit');
  const steps = readRecord(text, { ...layout, unit: layout.unit }, zone, 'winds.csv');
  let [count, longest, before] = [0, 0, 0];
  for (;;) {
    const step = steps.next();
    if (step.done) return { ...step.value, steps: count, longest };
    longest = Math.max(longest, step.value - before);
    before = step.value;
    count++;
  }
}
const cell = (reading: ReturnType<typeof read>, month: number, hour: number) =>
  reading.record.counts[(month - 1) * 24 + hour];

test.each([
  [['BKN020'], 3],
  [['FEW', 'SCT', 'M', ''], 2],
  [['METAR EPTO 211200Z 24008KT 9999 FEW010 OVC250 12/11 Q1013'], 3],
  [['CAVOK'], 0],
  [['VV002'], 4],
  [['6'], 3],
  [['0'], 0],
  [['9'], 4],
  [['M'], null],
  [['75'], null],
])('[I131] the cover of the sky as archives tell it: %j', (cells, cover) => {
  expect(coverIn(cells)).toBe(cover);
});

test('[I131] clouds are counted by month and hour, all layers of one sky; a table without them has none', () => {
  const rows = (sky: string) =>
    `valid,drct,sknt,skyc1,skyc2\n2025-06-21 12:00,240,10,${sky}\n2025-06-21 13:00,240,10,M,M`;
  const recordOf = (text: string) => {
    const layout = recordLayout(text);
    if (!layout) throw new Error('expected a layout');
    const steps = readRecord(text, { ...layout, unit: 'kt' }, 'UTC', 'x');
    let step = steps.next();
    while (!step.done) step = steps.next();
    return step.value.record;
  };
  const record = recordOf(rows('FEW,OVC'));
  expect(record.clouds?.[5 * 24 + 12]).toEqual([0, 0, 0, 0, 1]);
  expect(record.clouds?.[5 * 24 + 13]).toEqual([0, 0, 0, 0, 0]);
  expect(recordOf('valid,drct,sknt\n2025-06-21 12:00,240,10').clouds).toBeUndefined();
});

describe('tables of past winds', () => {
  test.each([
    ['station,valid,drct,sknt,gust', { time: 1, clock: null, direction: 2, speed: 3, gust: 4 }, 'kt'],
    [
      'Date;Time;Wind Direction (deg);Wind Speed (m/s);Gust (m/s)',
      { time: 0, clock: 1, direction: 2, speed: 3, gust: 4 },
      'm/s',
    ],
    [
      'timestamp\twind_dir\twind_speed_kmh',
      { time: 0, clock: null, direction: 1, speed: 2, gust: null },
      'km/h',
    ],
    ['DateTime,WindDir,WindSpd,WindGust', { time: 0, clock: null, direction: 1, speed: 2, gust: 3 }, null],
    ['time,wd,ws', { time: 0, clock: null, direction: 1, speed: 2, gust: null }, null],
    ['a,b,c', { time: null, clock: null, direction: null, speed: null, gust: null }, null],
  ])('[I100] columns by their names: %s', (headings, mapping, unit) => {
    const mark = /[,;\t]/.exec(headings)?.[0] ?? ',';
    const layout = recordLayout(
      `${headings}\n${headings
        .split(mark)
        .map(() => '1')
        .join(mark)}\n`,
    );
    expect(layout).toMatchObject({ mapping, unit });
  });

  test('[I101] counts by month, hour, direction and class; calm below 5 kt, gusts decide the class', () => {
    const reading = read(
      [
        'valid,drct,sknt,gust',
        '2026-06-21 14:50,240,15,M',
        '2026-06-21 14:20,240,10,22',
        '2026-06-21 15:20,VRB,6,',
        '2026-06-21 15:50,M,0,',
        '2026-06-21 16:20,360,4,',
        '2026-06-21 16:50,0,12,',
      ].join('\n'),
    );
    expect(reading).toMatchObject({ leftCount: 0, repeated: 0, record: { observations: 6, unread: 0 } });
    expect(cell(reading, 6, 14)).toEqual([cellOf(3, 24), 1, cellOf(5, 24), 1]);
    expect(cell(reading, 6, 15)).toEqual([0, 1, cellOf(0, variableDirection), 1]);
    expect(cell(reading, 6, 16)).toEqual([0, 1, cellOf(2, 0), 1]);
    expect(reading.record.classes[5]).toEqual({ meanKt: 10, strongestKt: 22 });
    expect(reading.record).toMatchObject({ from: '2026-06-21', to: '2026-06-21', source: 'winds.csv' });
  });

  test('[I102] metres a second and kilometres an hour become knots', () => {
    const ms = read('time,dir,speed (m/s)\n2026-01-01T00:00Z,90,10\n');
    expect(ms.record.classes[4]?.meanKt).toBeCloseTo(36_000 / 1852, 2);
    const kmh = read('time,dir,speed\n2026-01-01T00:00Z,90,20\n', { unit: 'km/h' });
    expect(kmh.record.classes[1]?.meanKt).toBeCloseTo(10.8, 2);
  });

  test('[I103] hours by the clock of the airfield: from UTC across the changing of clocks, or local already', () => {
    const rows = ['2026-03-29T00:30Z', '2026-03-29T01:30Z', '2026-12-31T23:30Z'].map((t) => `${t},240,15`);
    const text = ['time,dir,sknt', ...rows].join('\n');
    const there = read(text, {}, 'Europe/Warsaw');
    expect(cell(there, 3, 1)).toEqual([cellOf(3, 24), 1]);
    expect(cell(there, 3, 3)).toEqual([cellOf(3, 24), 1]);
    // Half past midnight of the first of January.
    expect(cell(there, 1, 0)).toEqual([cellOf(3, 24), 1]);
    const local = read(text.replaceAll('Z', ''), { clock: 'site' }, 'Europe/Warsaw');
    expect(cell(local, 12, 23)).toEqual([cellOf(3, 24), 1]);
    const india = read(
      'time,dir,sknt\n2026-05-01T18:29Z,240,15\n2026-05-01T18:31Z,240,15',
      {},
      'Asia/Kolkata',
    );
    expect([cell(india, 5, 23), cell(india, 5, 0)]).toEqual([
      [cellOf(3, 24), 1],
      [cellOf(3, 24), 1],
    ]);
  });

  test('[I104] days before months and months before days; unsure is said', () => {
    const table = (...dates: readonly string[]) =>
      ['date,time,dir,sknt', ...dates.map((d) => `${d},1450,240,15`)].join('\n');
    expect(recordLayout(table('03/04/2026', '25/04/2026'))).toMatchObject({
      order: 'dmy',
      orderUnsure: false,
    });
    expect(recordLayout(table('04/03/2026', '04/25/2026'))).toMatchObject({
      order: 'mdy',
      orderUnsure: false,
    });
    expect(recordLayout(table('03/04/2026'))).toMatchObject({ order: 'dmy', orderUnsure: true });
    expect(cell(read(table('03/04/2026')), 4, 14)).toHaveLength(2);
    expect(cell(read(table('03/04/2026'), { order: 'mdy' }), 3, 14)).toHaveLength(2);
  });

  test('[I105] rows that make no sense are listed with their number, those that do are kept, repeats are not counted twice', () => {
    const reading = read(
      [
        '# a logger wrote this',
        'time,dir,sknt,gust',
        '2026-06-21T14:50Z,240,15,',
        'yesterday,240,15,',
        '2026-06-31T14:50Z,240,15,',
        '2026-06-21T15:50Z,M,15,',
        '2026-06-21T16:50Z,240,M,',
        '2026-06-21T16:50Z,240,999.9,',
        '2026-06-21T14:50Z,250,16,',
        '',
        '2026-06-21T17:50Z,400,15,',
        '2026-06-21T18:50Z,"240",12,11',
      ].join('\r\n'),
    );
    expect(reading.left).toEqual([
      { row: 4, reason: 'no date and time: "yesterday"' },
      { row: 5, reason: 'no date and time: "2026-06-31T14:50Z"' },
      { row: 6, reason: 'no direction: "M"' },
      { row: 7, reason: 'no speed: "M"' },
      { row: 8, reason: 'no speed: "999.9"' },
      { row: 11, reason: 'no direction: "400"' },
    ]);
    expect(reading).toMatchObject({ leftCount: 6, repeated: 1, record: { observations: 2, unread: 6 } });
  });

  test('[I106] nothing, headings alone, one line without an end', () => {
    expect(recordLayout('')).toBe(null);
    expect(recordLayout('time,dir,sknt\n')).toBe(null);
    expect(recordLayout('\u0000\u0001')).toBe(null);
    expect(read('time,dir,sknt\n2026-06-21T14:50Z,240,15').record.observations).toBe(1);
    expect(read('time,dir,sknt\nx,y,z\n').record.observations).toBe(0);
  });

  test('[I107] a history of 40,000 rows is read in many small steps and comes down to a small record', () => {
    const rows = ['valid,drct,sknt,gust'];
    for (let i = 0; i < 40_000; i++) {
      const at = new Date(Date.UTC(2014, 0, 1) + i * 3_600_000).toISOString().slice(0, 16).replace('T', ' ');
      rows.push(`${at},${((i * 7919) % 36) * 10 + 10},${(i * 31) % 28},${i % 5 === 0 ? 35 : 'M'}`);
    }
    const reading = read(rows.join('\n'), {}, 'America/New_York');
    expect(reading).toMatchObject({ leftCount: 0, repeated: 0, record: { observations: 40_000 } });
    expect(reading.steps).toBeGreaterThan(12);
    const all = reading.record.counts.flatMap((list) => list.filter((_, i) => i % 2 === 1));
    expect(all.reduce((a, b) => a + b, 0)).toBe(40_000);
    expect(JSON.stringify(reading.record).length).toBeLessThan(400_000);
  });

  const quiet = once(() => [
    'valid,drct,sknt',
    ...Array.from(
      { length: 40_000 },
      (_, i) => `${new Date(Date.UTC(2014, 0, 1, i)).toISOString().slice(0, 16)}Z,240,12`,
    ),
  ]);
  test.each([
    ['open', 20_000, '"240'],
    ['with something behind it', 20_000, '"240"0'],
    ['in the first of the rows', 0, '"240'],
    ['in the last', 39_999, '"'],
  ])('[I200] a stray quote costs its own row and no long step: %s', (_, where, direction) => {
    const rows = quiet().with(where + 1, `2014-01-01T00:00Z,${direction},12`);
    const reading = read(rows.join('\n'));
    expect(reading).toMatchObject({ leftCount: 1, record: { observations: 39_999 } });
    expect(reading.left).toEqual([{ row: where + 2, reason: 'a quotation mark is not closed' }]);
    // No step takes more than a small share of the table.
    expect(reading.longest).toBeLessThan(0.05);
  });

  test('[I201] a quoted remark of several lines is one row, also where a step would end', () => {
    const remark = '"first line\nsecond, with a comma\nand ""more"""';
    const rows = Array.from({ length: 2000 }, (_, i) => {
      const at = new Date(Date.UTC(2014, 0, 1) + i * 3_600_000).toISOString().slice(0, 16);
      return `${at}Z,240,12,${remark}`;
    });
    const reading = read(['valid,drct,sknt,remark', ...rows].join('\n'));
    expect(reading).toMatchObject({ leftCount: 0, record: { observations: 2000 } });
    expect(reading.steps).toBeGreaterThan(5);
  });
});
