import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tableText } from '../../src/exports/tables';
import { readTable } from '../../src/imports/tables/read-table';
import type { ListEntries, ListName } from '../../src/survey/kit-lists';
import type { Body, Lens } from '../../src/survey/schema/kit';
import { starterKit } from '../../src/survey/starter/kit';
import { starterSubjects } from '../../src/survey/starter/subjects';

function readBack<L extends ListName>(list: L, entries: readonly ListEntries[L][]) {
  const reading = readTable(list, tableText(list, entries), []);
  if (!reading.ok) throw new Error(reading.reason);
  expect(reading.left).toEqual([]);
  expect(reading.remarks).toEqual([]);
  return reading.entries.map((e) => e.entry);
}

const text = fc.string({ unit: 'grapheme', maxLength: 12 }).map((t) => t.trim());
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const key = fc
  .string({ minLength: 1, maxLength: 6 })
  .map((t) => t.trim())
  .filter((t) => t !== '');
const unique = { selector: (entry: { key: string }) => entry.key, maxLength: 6 };
const bodies: fc.Arbitrary<Body[]> = fc.uniqueArray(
  fc.record({
    key,
    name: text,
    sensorWidth: number(1, 200),
    sensorHeight: number(1, 200),
    pixelsWide: fc.integer({ min: 1, max: 100_000 }),
    pixelsHigh: fc.integer({ min: 1, max: 100_000 }),
  }),
  unique,
);
const lenses: fc.Arbitrary<Lens[]> = fc.uniqueArray(
  fc.record({
    key,
    name: text,
    shortest: number(1, 100),
    longest: fc.double({ min: 100, max: 5000, noNaN: true }),
    widestAperture: number(0.5, 64),
    widestApertureLong: fc.option(number(0.5, 64), { nil: null }),
    extenders: fc.array(fc.double({ min: 1, max: 4, noNaN: true }), { maxLength: 3 }),
  }),
  unique,
);

describe('tables of the kit', () => {
  test('[L16] come back as they were: the starter lists', () => {
    expect(readBack('bodies', starterKit.bodies)).toEqual(starterKit.bodies);
    expect(readBack('lenses', starterKit.lenses)).toEqual(
      // What a table does not say is said to be nothing.
      starterKit.lenses.map((lens) => ({ widestApertureLong: null, ...lens })),
    );
    expect(readBack('subjects', starterSubjects)).toEqual(starterSubjects);
  });

  test('[L16] change nothing where the same entries are there already', () => {
    const reading = readTable('subjects', tableText('subjects', starterSubjects), starterSubjects);
    if (!reading.ok) throw new Error(reading.reason);
    expect(reading.entries).toHaveLength(starterSubjects.length);
    expect(reading.entries.filter((e) => e.change !== 'same')).toEqual([]);
  });

  test('[L16] come back as they were: whatever the names and numbers', () => {
    const named = <E extends { name: string | null }>(list: E[]) =>
      list.map((entry) => ({ ...entry, name: entry.name === '' ? null : entry.name }));
    const same = <L extends ListName>(list: L, entries: ListEntries[L][]) => {
      expect(named(readBack(list, entries))).toEqual(named(entries));
    };
    fc.assert(
      fc.property(bodies, (entries) => same('bodies', entries)),
      { seed: 41, numRuns: 200 },
    );
    fc.assert(
      fc.property(lenses, (entries) => same('lenses', entries)),
      { seed: 42, numRuns: 200 },
    );
  });

  test('[L17] hold no text that a spreadsheet would run, and lose nothing by it', () => {
    const [body] = starterKit.bodies;
    if (!body) throw new Error('expected a starter body');
    const names = ['=1+1', '@SUM(A1)', '+49', '-x', "'=1", "'quoted'"];
    const entries = names.map((name, i) => ({ ...body, key: `${i}`, name }));
    const table = tableText('bodies', entries);
    expect(table).not.toMatch(/,[=+@-]/);
    expect(readBack('bodies', entries)).toEqual(entries);
  });

  test('name their columns with units, in the order of the forms', () => {
    expect(tableText('lenses', []).trim()).toBe(
      'Key,Name,Shortest focal length (mm),Longest focal length (mm),Widest aperture,Widest aperture at the longest,Extenders',
    );
    expect(tableText('subjects', []).split(',').slice(0, 4)).toEqual([
      '\ufeffKey',
      'Name',
      'Length (m)',
      'Span (m)',
    ]);
  });
});
