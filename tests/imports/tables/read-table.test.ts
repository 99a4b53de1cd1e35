import { describe, expect, test } from 'vitest';
import { readTable } from '../../../src/imports/tables/read-table';
import type { ListName } from '../../../src/survey/kit-lists';
import type { Lens } from '../../../src/survey/schema/kit';
import { starterKit } from '../../../src/survey/starter/kit';
import { starterSubjects } from '../../../src/survey/starter/subjects';

const existing = { ...starterKit, subjects: starterSubjects };

function read<L extends ListName>(list: L, text: string) {
  const reading = readTable(list, text, existing[list] as never);
  if (!reading.ok) throw new Error(reading.reason);
  return reading;
}
const entriesOf = (list: ListName, text: string) => read(list, text).entries.map((e) => e.entry);

const lens: Lens = {
  key: 'tele',
  name: 'Long one',
  shortest: 150,
  longest: 600,
  widestAperture: 6.3,
  extenders: [1.4, 2],
};
const lensHeadings =
  'Key,Name,Shortest focal length (mm),Longest focal length (mm),Widest aperture,Extenders';

describe('headings', () => {
  test.each([
    ['as we write them', `${lensHeadings}\ntele,Long one,150,600,6.3,1.4 2`],
    ['with a byte order mark', `\ufeff${lensHeadings}\r\ntele,Long one,150,600,6.3,1.4 2\r\n`],
    [
      'in any case, with strokes and other brackets',
      'KEY,name,SHORTEST-FOCAL-LENGTH [mm],longest,aperture,teleconverter\ntele,Long one,150,600,f/6.3,1.4x; 2x',
    ],
    [
      'as members, in another order',
      'widestAperture,longest,shortest,extenders,name,key\n6.3,600 mm,150mm,1.4/2,Long one,tele',
    ],
    [
      'in other units',
      'key,name,shortest (cm),longest cm,aperture (f),extenders (x)\ntele,Long one,15,60,6.3,"1.4, 2"',
    ],
    [
      'parted by semicolons, with decimal commas',
      'key;name;shortest;longest;aperture;extenders\ntele;Long one;150;600;6,3;1,4 2',
    ],
    [
      'parted by tabs',
      'key\tname\tshortest\tlongest\taperture\textenders\ntele\tLong one\t150,0\t600\t6,3\t1,4 2',
    ],
    [
      'behind a line that names the separator',
      'sep=;\r\nkey;name;shortest;longest;aperture;extenders\r\ntele;Long one;150;600;6.3;1.4 2',
    ],
  ])('[L11] are found %s', (_how, text) => {
    expect(entriesOf('lenses', text)).toEqual([lens]);
  });

  test('that are not known, or come twice, or in a strange unit, are said and left out', () => {
    const { entries, remarks } = read(
      'lenses',
      'key,name,colour,shortest,longest,maximum focal length,aperture,extenders (kg)\ntele,Long one,red,150,600,700,6.3,3',
    );
    expect(entries[0]?.entry).toEqual({ ...lens, extenders: [] });
    expect(remarks).toEqual([
      'The column "colour" is not known and is left out.',
      'The column "maximum focal length" is left out: an earlier one says the same.',
      'The column "extenders (kg)" is left out: its unit is not known.',
    ]);
  });

  test('[L12] that are needed are asked for by name', () => {
    const reading = readTable('bodies', 'name,sensor width,pixels wide\nA,36,6000', []);
    expect(reading).toMatchObject({
      ok: false,
      reason: expect.stringMatching(/no column for: Sensor height, Pixels high\. .*first row/) as string,
    });
    expect(readTable('bodies', '', [])).toEqual({ ok: false, reason: 'The table is empty.' });
    expect(readTable('bodies', 'x'.repeat(2_000_001), [])).toMatchObject({ ok: false });
  });
});

describe('units', () => {
  const headings = (length: string, speed: string, gradient: string) =>
    `key,name,${length},span,height,propulsion,${speed},climb speed (m/s),ground run,landing run,${gradient}`;
  const row = (length: string, speed: string, gradient: string) =>
    `x,X,${length},11,3,Jet,${speed},80,900,800,${gradient}`;

  test.each([
    ['length (ft)', '50', 'approach speed (kt)', '90', 'climb gradient (%)', '8.5'],
    ['length', '50 ft', 'approach speed', '90 kt', 'climb gradient', '8.5 %'],
    ['length (m)', '15.24', 'approach speed (km/h)', '166.68', 'climb gradient (m/m)', '0.085'],
    ['length (m)', '50 ft', 'approachSpeed (kt)', '46.3 m/s', 'gradient', '0.085'],
  ])('[L13] %s %s, %s %s, %s %s', (l, length, s, speed, g, gradient) => {
    const [entry] = entriesOf('subjects', `${headings(l, s, g)}\n${row(length, speed, gradient)}`);
    expect(entry).toMatchObject({
      length: 15.24,
      approachSpeed: 46.3,
      climbGradient: 0.085,
      propulsion: 'jet',
    });
  });
});

describe('rows', () => {
  const headings = 'name,shortest,longest,aperture\n';

  test('[L14] that make no sense are left out, each with its reason; the others come in', () => {
    const { entries, left } = read(
      'lenses',
      `${lensHeadings}
a,Zero,0,200,4,
b,Ends swapped,200,70,4,
c,Wordy,long,200,4,

d,Empty,,200,4,
e,Good,70,200,4,
,,70,200,4,
e,Twice,24,70,4,
f,Wide open,50,50,0,7`,
    );
    expect(entries.map((e) => [e.row, e.entry.key])).toEqual([[7, 'e']]);
    expect(left).toEqual([
      {
        row: 2,
        reason: 'Shortest focal length: "0" does not fit, a number from 1 to 5000 mm is expected',
      },
      {
        row: 3,
        reason:
          'Longest focal length: "70" does not fit, no less than the shortest focal length, 200 mm is expected',
      },
      { row: 4, reason: 'Shortest focal length: "long" is no number in a unit that is known' },
      { row: 6, reason: 'Shortest focal length is missing' },
      { row: 8, reason: 'it has neither a key nor a name' },
      { row: 9, reason: '"e" stands in row 7 already' },
      {
        row: 10,
        reason:
          'Widest aperture: "0" does not fit, a number from 0.5 to 64 (f-number) is expected; Extenders: "7" does not fit, factors from 1 to 4 is expected',
      },
    ]);
  });

  test('with a quotation mark that is never closed are said', () => {
    const { entries, left } = read('lenses', `${headings}Good,70,200,4\n"Bad,70,200,4`);
    expect(entries).toHaveLength(1);
    expect(left).toEqual([{ row: 3, reason: 'a quotation mark is not closed' }]);
  });

  test('[I202] with a quotation mark that is never closed cost no other row', () => {
    const { entries, left } = read('lenses', `${headings}Good,70,200,4\n"Bad,70,200,4\nFine,100,400,5.6`);
    expect(entries.map(({ row, entry }) => [row, entry.name])).toEqual([
      [2, 'Good'],
      [4, 'Fine'],
    ]);
    expect(left).toEqual([{ row: 3, reason: 'a quotation mark is not closed' }]);
  });

  test('[L15] are known again by key, or by name where the table has no keys', () => {
    const change = (text: string) => read('lenses', text).entries.map((e) => [e.entry.key, e.change]);
    expect(change(`key,${headings}tele-zoom,70–200 mm f/2.8,70,200,2.8\nlong-zoom,Mine,100,500,5.6`)).toEqual(
      [
        ['tele-zoom', 'same'],
        ['long-zoom', 'replaces'],
      ],
    );
    expect(change(`${headings}70–200 mm f/2.8,70,200,4\nTele zoom!,100,300,4\n望遠,100,300,4`)).toEqual([
      ['tele-zoom', 'replaces'],
      ['tele-zoom-2', 'new'],
      ['望遠', 'new'],
    ]);
  });

  test('leave alone what the table has no column for, and clear what its cells leave empty', () => {
    const [first] = starterSubjects;
    const table = (heading: string) =>
      `key,name,length,span,height,propulsion,approach speed,climb speed,ground run,landing run,climb gradient${heading}\n${first?.key},New name,40,30,10,jet,70,80,900,800,0.1${heading && ','}`;
    expect(entriesOf('subjects', table(''))[0]).toMatchObject({
      name: 'New name',
      engines: first?.engines,
      length: 40,
    });
    expect(entriesOf('subjects', table(',engines'))[0]).toMatchObject({ engines: null });
    expect(first?.engines).toBe(2);
  });
});
