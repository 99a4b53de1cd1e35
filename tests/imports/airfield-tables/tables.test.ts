import { describe, expect, it } from 'vitest';
import { proposalOf } from '../../../src/imports/bring-in/combine';
import { readFiles } from '../../../src/imports/bring-in/read-file';
import type { Answers, Surroundings } from '../../../src/imports/bring-in/types';
import { readRunwayProperties } from '../../../src/survey/schema/runway';
import { answers, field, fileOf, now } from '../fixtures/surroundings';

/** The columns of the open airport data set, with invented airfields. */
const airports = `"id","ident","type","name","latitude_deg","longitude_deg","elevation_ft","iso_country","municipality","gps_code","iata_code","local_code"
1,"XXTO","medium_airport","Tolver Field",50.93,18.18,610,"XX","Tolver","XXTO","TVF",""
2,"XX-0002","small_airport","Far Strip",51.2,19.0,,"XX","Far","","",""
3,"XXBAD","closed","Nowhere",,,,"XX","","","",""`;

const columns =
  'id,airport_ref,airport_ident,length_ft,width_ft,surface,lighted,closed,le_ident,le_latitude_deg,le_longitude_deg,le_elevation_ft,le_heading_degT,le_displaced_threshold_ft,he_ident,he_latitude_deg,he_longitude_deg,he_elevation_ft,he_heading_degT,he_displaced_threshold_ft';
const rows = [
  '11,1,XXTO,6830,148,ASP,1,0,07,50.9295056,18.1678602,610,70,525,25,50.9359,18.1956776,623,250,',
  '12,1,XXTO,1800,,GRE,0,1,18L,50.94,18.18,,,,36R,50.935,18.18,,,',
  '13,1,XXTO,2000,60,GRS,0,0,09,,,,,,27,,,,,',
  '14,2,XX-0002,2600,98,TURF,0,0,12,51.201,18.99,,,,30,51.197,19.0,,,',
];
const runways = [columns, ...rows].join('\n');

const proposed = async (
  files: readonly (readonly [string, string])[],
  with_: Partial<Answers> = {},
  around: Partial<Surroundings> = {},
) => {
  const { sources, refused } = await readFiles(
    files.map(([name, text]) => fileOf(name, text)),
    { progress: () => undefined, now },
  );
  expect(refused).toEqual([]);
  return proposalOf(sources, { ...field, ...around }, { ...answers, ...with_ });
};

describe('tables of the open airport data set', () => {
  it('[I50] give the runways of the nearest airfield, in metres, with what contradicts itself', async () => {
    const { candidates, leftOut, remarks, asks } = await proposed([['runways.csv', runways]]);
    expect(candidates.map((c) => c.source)).toEqual(['airport table 11', 'airport table 12']);
    const doubts: string[] = [];
    const [long, closed] = candidates.map((c) => readRunwayProperties(c.properties, (d) => doubts.push(d)));
    expect(doubts).toEqual([]);
    expect(long).toMatchObject({ name: '07/25', surface: 'asphalt' });
    expect(long?.width).toBeCloseTo(45.11, 2);
    expect(long?.ends[0]).toMatchObject({
      designator: '07',
      elevation: 185.93,
      displaced: 160.02,
      closed: false,
    });
    expect(long?.ends[1]).toMatchObject({ designator: '25', displaced: 0 });
    expect(closed?.ends.map((e) => e.closed)).toEqual([true, true]);
    expect(closed?.surface).toBe('gravel');
    // 1,800 ft are 549 m, and the ends lie 556 m apart: no doubt about the length, but there are no elevations.
    expect(closed?.doubts.join(' ')).toContain('elevation');
    expect(leftOut).toContainEqual({
      what: 'runways',
      reason: 'the table does not say where both ends lie',
      count: 1,
    });
    expect(remarks.join(' ')).toContain('Draw it by its two ends');
    expect(asks.airfields.map((f) => f.ident)).toEqual(['XXTO', 'XX-0002']);
  });

  it('[I51] give another airfield by its code, or say that there is none', async () => {
    const strip = await proposed([['runways.csv', runways]], { airfield: 'xx-0002' });
    expect(strip.candidates.map((c) => c.properties['name'])).toEqual(['12/30']);
    const none = await proposed([['runways.csv', runways]], { airfield: 'ZZZZ' });
    expect(none.candidates).toEqual([]);
    expect(none.remarks.join(' ')).toContain('no airfield "ZZZZ"');
  });

  it('[I52] together name the site of a survey that says nothing yet', async () => {
    const both = [
      ['airports.csv', airports],
      ['runways.csv', runways],
    ] as const;
    const nowhere = { reference: null, elevation: null };
    const { site, candidates, leftOut } = await proposed(both, { airfield: 'XXTO' }, nowhere);
    expect(site).toEqual({
      reference: [18.18, 50.93],
      name: 'Tolver Field',
      icao: 'XXTO',
      elevation: 185.93,
    });
    expect(candidates).toHaveLength(2);
    expect(leftOut).toContainEqual({ what: 'rows', reason: 'they have no code or no coordinates', count: 1 });
    expect((await proposed(both)).site).toEqual({});
    const alone = await proposed([['airports.csv', airports]]);
    expect(alone.candidates).toEqual([]);
    expect(alone.remarks.join(' ')).toContain('runways.csv');
  });

  it('[I53] are read from spreadsheets: byte order mark, semicolons, decimal commas, columns missing or moved', async () => {
    const parted = runways.split('\n').map((line) => line.split(','));
    const keep =
      parted[0]?.map((name, i) => ({ name, i })).filter(({ name }) => !/^(id|lighted|surface)$/.test(name)) ??
      [];
    const text = parted
      .map((cells) =>
        keep
          .map(({ i }) => (cells[i] ?? '').replace('.', ','))
          .reverse()
          .join(';'),
      )
      .join('\r\n');
    const { candidates } = await proposed([['runways.csv', `\uFEFF${text}`]]);
    const plain = (await proposed([['runways.csv', runways]])).candidates;
    expect(candidates.map((c) => c.shape)).toEqual(plain.map((c) => c.shape));
    expect(candidates.map((c) => c.properties['ends'])).toEqual(plain.map((c) => c.properties['ends']));
  });

  it('[I54] bring in no runway that the survey has already, and turn none round', async () => {
    const known = {
      name: '07/25',
      line: [
        [18.1956776, 50.9359],
        [18.1678602, 50.9295056],
      ],
      elevations: [null, null],
      source: 'osm way/1',
    } as const satisfies Surroundings['runways'][number];
    const { candidates, leftOut } = await proposed([['runways.csv', runways]], {}, { runways: [known] });
    expect(candidates.map((c) => c.source)).toEqual(['airport table 12']);
    expect(leftOut).toContainEqual({
      what: 'runway 07/25',
      reason: 'the survey has this runway already',
      count: 1,
    });
  });

  it.each([
    ['1e309', 'infinite'],
    ['9e18', 'far too long'],
    ['-400', 'negative'],
  ])('[I210] a displaced threshold of %s ft (%s) never comes in', async (displaced) => {
    const row = `15,1,XXTO,6830,148,ASP,1,0,07,50.9295056,18.1678602,${displaced},70,${displaced},25,50.9359,18.1956776,623,250,`;
    const { candidates, leftOut } = await proposed([['runways.csv', [columns, row].join('\n')]]);
    const doubts: string[] = [];
    const runway = readRunwayProperties(candidates[0]?.properties ?? {}, (doubt) => doubts.push(doubt));
    expect(candidates).toHaveLength(1);
    expect(doubts).toEqual([]);
    expect(runway.ends[0].displaced).toBe(0);
    expect(JSON.stringify(candidates)).not.toContain('"displaced":null');
    if (displaced !== '1e309')
      expect(leftOut).toContainEqual({
        what: 'displaced thresholds',
        reason: 'they are outside 0 m to 5,000 m',
        count: 1,
      });
  });
});
