import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { listLayout, readList } from '../../src/imports/movements/read-list';
import { readTable } from '../../src/imports/tables/read-table';
import { readGeotiff } from '../../src/imports/terrain/read-geotiff';
import { recordLayout, readRecord } from '../../src/imports/wind-record/read-record';
import { readContents } from '../../src/survey/contents';
import { saveSurvey } from '../../src/survey/save';
import { openSurvey } from '../../src/survey/open';
import { newSurvey } from '../../src/survey/new-survey';
import { starterKit } from '../../src/survey/starter/kit';
import { damagedText } from '../support/damage';
import { tiff } from '../support/tiff';
import { cases } from '../support/thorough';

/** Pinned, so that a failure is the same tomorrow. What is brought in as features is in bring-in/fuzz.test.ts. */
const seed = 20261128;
const numRuns = cases(250, 6);

const finite = (value: unknown): boolean =>
  typeof value !== 'object' || value === null
    ? typeof value !== 'number' || Number.isFinite(value)
    : Object.values(value).every(finite);

const winds = [
  'valid,drct,sknt,gust,remark',
  '2026-06-21T13:50Z,240,15,25,',
  '2026-06-21 14:50,250,16,,"two\nlines, and ""more"""',
  '21/06/2026 16:50,VRB,3,M,',
  '1782060600,10,0,,x',
].join('\n');

const movements = [
  'Flight,Type,From,To,Date,Time (UTC),Rwy',
  'ZZ123,A320,Oskin,EPTO,2026-06-21,14:25,25',
  'ZZ124,B738,EPTO,Pallin,2026-06-21,15:10,07',
  'ZZ125,AT76,"Oskin, New",EPTO,,23:55,',
].join('\n');
const typed = '1425 a A320 ZZ123 Oskin\n14:40 dep B738 r07 *\n2:25pm landing C172';

const lenses =
  'Key,Name,Shortest,Longest,Widest aperture,Extenders\nz,"70-200 mm, f/2.8",70,200,2.8,1.4 2\n,,100,400,5.6,';

describe('[I214] damaged tables are read as far as they make sense, or refused in words', () => {
  test('of past winds', () => {
    fc.assert(
      fc.property(damagedText(winds), (text) => {
        const layout = recordLayout(text);
        if (!layout) return;
        const steps = readRecord(
          text,
          { ...layout, unit: layout.unit ?? 'kt' },
          'Europe/Warsaw',
          'winds.csv',
        );
        let step = steps.next();
        while (!step.done) {
          expect(step.value).toBeGreaterThan(0);
          expect(step.value).toBeLessThanOrEqual(1);
          step = steps.next();
        }
        const { record, left, leftCount } = step.value;
        expect(finite(record)).toBe(true);
        expect(left.length).toBeLessThanOrEqual(leftCount);
        // What is read survives saving, without a doubt.
        const survey = newSurvey({ reference: [18.17, 50.93] });
        const opened = openSurvey(
          saveSurvey({
            ...survey,
            sunside: { ...survey.sunside, windRecord: { ...record } },
          }),
        );
        if (!opened.ok) throw new Error(opened.reason);
        expect(readContents(opened.survey).problems).toEqual([]);
      }),
      { seed, numRuns },
    );
  });

  test.each([
    ['in columns', movements],
    ['typed', typed],
  ])('of movements, %s', (_, text) => {
    fc.assert(
      fc.property(damagedText(text), (broken) => {
        const layout = listLayout(broken, '2026-06-21');
        if (!layout) return;
        const reading = readList(layout, 'Europe/Warsaw', '2026-06-21', ['EPTO'], []);
        for (const { time, date } of reading.movements) {
          expect(time).toMatch(/^([01]\d|2[0-3]):[0-5]\d$/);
          if (date !== null) expect(new Date(`${date}T00:00:00Z`).toISOString().slice(0, 10)).toBe(date);
        }
        for (const { reason } of reading.left) expect(reason.length).toBeGreaterThan(5);
      }),
      { seed, numRuns },
    );
  });

  test('of lenses', () => {
    fc.assert(
      fc.property(damagedText(lenses), (text) => {
        const reading = readTable('lenses', text, starterKit.lenses);
        if (!reading.ok) expect(reading.reason.length).toBeGreaterThan(10);
        else
          for (const { entry } of reading.entries) {
            expect(finite(entry)).toBe(true);
            expect(entry.longest).toBeGreaterThanOrEqual(entry.shortest);
          }
      }),
      { seed, numRuns },
    );
  });
});

describe('[I215] damaged models of the ground', () => {
  test('are read or refused in words, several bytes gone at once', async () => {
    const whole = new Uint8Array(
      tiff({
        columns: 4,
        rows: 3,
        heights: [10, 11, 12, 13, 20, 21, 22, 23, 30, 31, 32, 33],
        west: 8.49,
        north: 47.41,
        stepLng: 0.01,
        stepLat: 0.008,
        noData: '-9999',
      }),
    );
    const byte = fc.record({
      at: fc.integer({ min: 0, max: whole.length - 1 }),
      to: fc.integer({ min: 0, max: 255 }),
    });
    await fc.assert(
      fc.asyncProperty(
        fc.array(byte, { minLength: 1, maxLength: 6 }),
        fc.integer({ min: 0, max: 60 }),
        async (bytes, cut) => {
          const damaged = whole.slice(0, whole.length - cut);
          for (const { at, to } of bytes) damaged[at] = to;
          const reading = await readGeotiff(damaged.buffer, [8.5, 47.4]);
          if (reading.ok) expect(reading.grid.heights.length).toBe(reading.grid.columns * reading.grid.rows);
          else expect(reading.reason.length).toBeGreaterThan(10);
        },
      ),
      { seed, numRuns: cases(400) },
    );
  });
});
