import { describe, expect, it } from 'vitest';
import { proposalOf } from '../../../src/imports/bring-in/combine';
import { readFiles } from '../../../src/imports/bring-in/read-file';
import type { Answers, Proposal, Surroundings } from '../../../src/imports/bring-in/types';
import { aboveSeaLevel, pressureAltitude } from '../../../src/imports/tracks/altitude';
import { partsOfTrack } from '../../../src/imports/tracks/parts';
import type { TrackPoint } from '../../../src/imports/tracks/track';
import { Tally } from '../../../src/imports/bring-in/tally';
import type { Position } from '../../../src/survey/document';
import { feetToMetres } from '../../../src/units/length';
import { answers, field, fileOf, now } from '../fixtures/surroundings';
import { csv, csvCommas, flown, geojson, gpx, kmlLine, kmlTrack } from '../fixtures/tracks';

const read = (name: string, text: string) =>
  readFiles([fileOf(name, text)], { progress: () => undefined, now });

async function proposed(
  name: string,
  text: string,
  with_: Partial<Answers> = {},
  around: Partial<Surroundings> = {},
): Promise<Proposal> {
  const { sources, refused } = await read(name, text);
  expect(refused).toEqual([]);
  return proposalOf(sources, { ...field, ...around }, { ...answers, ...with_ });
}
const flights = ({ candidates }: Proposal) => candidates.filter(({ kind }) => kind === 'flight-path');
const heightsOf = (proposal: Proposal) => flights(proposal).map((f) => f.properties['heights'] as number[]);
const elevations = flown.map(({ ele }) => ele);
const near = (a: readonly number[] | undefined, b: readonly number[], within = 0.11) => {
  expect(a).toHaveLength(b.length);
  a?.forEach((h, i) => expect(Math.abs(h - (b[i] ?? NaN))).toBeLessThan(within));
};
/** The runway that the invented flight lands on, 186 m above the sea. */
const runway = {
  name: '07/25',
  line: [
    [18.1678602, 50.9295056],
    [18.1956776, 50.9359],
  ],
  elevations: [186, 190],
  source: null,
} as const satisfies Surroundings['runways'][number];

describe('recorded flights', () => {
  it('[I30] come in the same from GPX, KML tracks, GeoJSON and tables, with their times', async () => {
    for (const [name, text] of [
      ['a.gpx', gpx()],
      ['b.kml', kmlTrack()],
      ['c.geojson', geojson()],
      ['d.csv', csv()],
      ['e.csv', csvCommas()],
    ] as const) {
      const [flight, ...others] = flights(await proposed(name, text));
      expect(others).toEqual([]);
      near(flight?.properties['heights'] as number[], elevations);
      expect(flight?.shape.coordinates).toEqual(flown.map(({ lng, lat }) => [lng, lat]));
      expect(flight?.properties['times']).toEqual(flown.map(({ time }) => time));
      expect(flight?.properties['source']).toBe('recorded');
    }
    const [line] = flights(await proposed('f.kml', kmlLine()));
    near(line?.properties['heights'] as number[], elevations);
    expect(line?.properties).not.toHaveProperty('times');
  });

  it('[I31] count pressure altitudes from the setting of the day, by the standard atmosphere', async () => {
    // ICAO Doc 7488 (from memory): 1000 hPa at 110.9 m, 850 hPa at 1457.3 m, 500 hPa at 5574.4 m.
    expect(pressureAltitude(1000)).toBeCloseTo(110.9, 1);
    expect(pressureAltitude(850)).toBeCloseTo(1457.3, 1);
    expect(pressureAltitude(500)).toBeCloseTo(5574.4, 1);
    expect(pressureAltitude(1013.25)).toBe(0);
    const with_ = { altitudeMeaning: 'pressure', qnh: 1000 } as const;
    // A low pressure: one is lower than the altimeter set to 1013.25 says.
    near(
      heightsOf(await proposed('a.gpx', gpx(), with_))[0],
      elevations.map((e) => e - 110.9),
    );
    const [flight] = flights(await proposed('a.gpx', gpx(), with_));
    expect(flight?.properties['altitude']).toEqual({ meaning: 'pressure', qnh: 1000 });
  });

  it('[I32] count heights above the ellipsoid from the sea by the separation that the user types', () => {
    expect(aboveSeaLevel(100, { altitudeMeaning: 'ellipsoid', qnh: 1013.25, geoid: 42 })).toBe(58);
    expect(aboveSeaLevel(100, { altitudeMeaning: 'ellipsoid', qnh: 1013.25, geoid: -30 })).toBe(130);
    expect(aboveSeaLevel(100, { altitudeMeaning: 'sea-level', qnh: 980, geoid: 42 })).toBe(100);
  });

  it('[I33] are tied to the runway by their lowest point on it', async () => {
    const low = flown.map((p) => ({ ...p, ele: p.ele - 47 }));
    const proposal = await proposed('a.gpx', gpx(low), { tieToRunway: true }, { runways: [runway] });
    const [heights] = heightsOf(proposal);
    // The last point lies 1,050 m along 2,080 m of runway: 186 + 2 m, and half of 12 m to the centre.
    expect(heights?.at(-1)).toBeCloseTo(194.1, 0);
    expect(flights(proposal)[0]?.properties['altitude']).toMatchObject({ meaning: 'sea-level' });
    const shift = (heights?.[0] ?? 0) - (low[0]?.ele ?? 0);
    near(
      heights,
      low.map((p) => p.ele + shift),
    );
    const untied = await proposed('a.gpx', gpx(low), { tieToRunway: true });
    near(
      heightsOf(untied)[0],
      low.map((p) => p.ele),
    );
    expect(untied.remarks.join(' ')).toContain('not tied');
  });

  it('[I34] ask for the unit only where the file does not say it', async () => {
    expect((await proposed('d.csv', csv())).asks.altitudeUnit).toBe(false);
    const bare = csv().replace('Altitude (ft)', 'Altitude');
    const proposal = await proposed('d.csv', bare, { altitudeUnit: 'ft' });
    expect(proposal.asks).toMatchObject({ altitude: true, altitudeUnit: true });
    near(heightsOf(proposal)[0], elevations);
    const metres = heightsOf(await proposed('d.csv', bare, { altitudeUnit: 'm' }))[0];
    expect(feetToMetres(metres?.[0] ?? 0)).toBeCloseTo(elevations[0] ?? 0, 0);
  });

  it('[I35] know their points again: the same file gives the same sources, another setting changes only heights', async () => {
    const [a] = flights(await proposed('a.gpx', gpx()));
    const [b] = flights(await proposed('copy.gpx', gpx(), { altitudeMeaning: 'ellipsoid', geoid: 40 }));
    expect(b?.source).toBe(a?.source);
    expect(b?.properties['heights']).not.toEqual(a?.properties['heights']);
    const [other] = flights(await proposed('a.gpx', gpx(flown.slice(1))));
    expect(other?.source).not.toBe(a?.source);
  });

  it('[I36] keep only what lies near the airfield, and say how much does not', async () => {
    const proposal = await proposed('a.gpx', gpx(), { radius: 2000 });
    const kept = heightsOf(proposal)[0]?.length ?? 0;
    expect(kept).toBeGreaterThan(3);
    const away = proposal.leftOut.find(({ what }) => what === 'points');
    expect(away).toMatchObject({
      reason: 'farther than 2,000 m from the airfield',
      count: flown.length - kept,
    });
  });

  it('[I37] without altitudes are left out, and routes are no flights', async () => {
    const { leftOut, candidates } = await proposed(
      'a.gpx',
      gpx()
        .replace(/(<time>[^<]*<\/time><\/trkpt>)/g, '$1')
        .replace(/<ele>[^<]*<\/ele>/g, ''),
    );
    expect(candidates.filter((c) => c.kind === 'flight-path')).toEqual([]);
    expect(leftOut.map(({ what, reason }) => `${what}: ${reason}`)).toEqual(
      expect.arrayContaining([
        'flights: they have no altitudes; a flight path needs one for each point',
        'routes: they are planned, not flown',
      ]),
    );
  });
});

describe('the points of a recorded flight', () => {
  const at = (i: number, altitude: number | null, time: number | null = i * 1000): TrackPoint => ({
    position: [18 + i * 0.001, 50.9],
    altitude,
    time,
  });
  const parted = (points: readonly TrackPoint[]) => {
    const tally = new Tally();
    const parts = partsOfTrack({ name: '', unit: 'm', points }, tally);
    return { parts, said: tally.list.map(({ what, reason, count }) => `${count} ${what}: ${reason}`) };
  };

  it('[I38] part where the recorder was silent for more than a minute, or leaps without times', () => {
    const silent = [at(0, 100), at(1, 100), at(2, 100, 62_001), at(3, 100, 63_000)];
    expect(parted(silent).parts.map((p) => p.length)).toEqual([2, 2]);
    expect(parted([...silent.slice(0, 2), at(2, 100, 61_000)]).parts).toHaveLength(1);
    const leap = [at(0, 100, null), at(1, 100, null), at(60, 100, null), at(61, 100, null)];
    expect(parted(leap).parts.map((p) => p.length)).toEqual([2, 2]);
  });

  it('[I39] do not repeat themselves: one time once, one place once, no time backwards', () => {
    const { parts, said } = parted([
      at(0, 100),
      at(1, 100),
      at(2, 100, 1000),
      at(1, 100, 3000),
      at(3, 100, 2500),
      at(4, 100, 4000),
    ]);
    expect(parts[0]?.map((p) => p.time)).toEqual([0, 1000, 4000]);
    expect(said).toEqual(
      expect.arrayContaining([
        '1 points: there is one with the same time before',
        '1 points: they repeat the position before',
        '1 points: their times run backwards',
      ]),
    );
  });

  it('[I40] of altitude 0 between others that are not are missing ones; near the sea a zero is a zero', () => {
    const zeros = parted([at(0, 500), at(1, 0), at(2, 480)]);
    expect(zeros.parts[0]?.map((p) => p.altitude)).toEqual([500, null, 480]);
    expect(zeros.said).toEqual(['1 altitudes: they are 0 between others that are not']);
    expect(parted([at(0, 12), at(1, 0), at(2, 5)]).parts[0]?.map((p) => p.altitude)).toEqual([12, 0, 5]);
    expect(parted([at(0, 0), at(1, 0)]).parts[0]?.map((p) => p.altitude)).toEqual([0, 0]);
  });

  it('[I41] without altitude take the straight line between those that have one, or the runway they are on', async () => {
    const holes = flown.map((p, i) => ({ ...p, ele: i === 4 || i === 15 ? 0 : p.ele }));
    const [heights] = heightsOf(await proposed('a.gpx', gpx(holes)));
    expect(heights?.[4]).toBeCloseTo(((elevations[3] ?? 0) + (elevations[5] ?? 0)) / 2, 0);
    expect(heights?.[15]).toBe(elevations[14]);
    const grounded = heightsOf(await proposed('a.gpx', gpx(holes), {}, { runways: [runway] }))[0];
    expect(grounded?.[15]).toBeCloseTo(194.1, 0);
  });

  it('[I42] at 0, 0 are no places', () => {
    const nowhere = { ...at(1, 100), position: [0, 0] as Position };
    const { parts, said } = parted([at(0, 100), nowhere, at(2, 100)]);
    expect(parts.map((p) => p.length)).toEqual([2]);
    expect(said).toEqual(['1 points: their coordinates are none, or 0, 0']);
  });
});

describe('waypoints', () => {
  it('[I43] become standing spots whose access nobody knows; notes are words, never markup', async () => {
    const { candidates, leftOut } = await proposed('a.gpx', gpx());
    const spots = candidates.filter(({ kind }) => kind === 'standing-spot');
    expect(spots.map(({ properties }) => properties)).toEqual([
      { name: 'Mound & gate', notes: 'Muddy after rain', access: { status: 'unknown' } },
      { name: 'East end', access: { status: 'unknown' } },
    ]);
    expect(leftOut).toContainEqual({
      what: 'waypoints',
      reason: 'farther than 10,000 m from the airfield',
      count: 1,
    });
    const [hill] = (await proposed('b.kml', kmlTrack())).candidates.filter((c) => c.kind === 'standing-spot');
    expect(hill?.properties).toMatchObject({ name: 'Hill', notes: 'Good in the morning' });
  });
});

describe('broken tracks', () => {
  it('[I44] say where XML breaks, and what a table lacks', async () => {
    expect((await read('a.gpx', gpx().slice(0, 900))).refused.join()).toMatch(
      /a\.gpx: The file is not XML\..*[Ll]ine \d+/s,
    );
    expect((await read('b.csv', 'time,latitude,longitude\n1,2,3')).refused.join()).toContain(
      'no column for: altitude. Its first row must name the columns',
    );
    const { leftOut } = await proposed('c.csv', `${csv()}\r\n2026-06-21T10:09:00Z,ninety,18.2,600`);
    expect(leftOut).toContainEqual({
      what: 'rows',
      reason: 'their latitude or longitude is no number of degrees',
      count: 1,
    });
  });

  it.each([
    ['no instant at all', 1e308],
    ['beyond what a calendar holds', 8.65e15],
    ['long before there were aircraft', -9e15],
    ['in the year 271821', '+271821-04-20T00:00:00Z'],
    ['in the year 99999', 253402300800000 * 32],
  ])('[I212] come in without times that are %s', async (_, time) => {
    const collection = JSON.parse(geojson()) as { features: { properties: { coordTimes: unknown[] } }[] };
    const [feature] = collection.features;
    if (!feature) throw new Error('expected a flight');
    feature.properties.coordTimes = flown.map(() => time);
    const [flight] = flights(await proposed('a.geojson', JSON.stringify(collection)));
    near(flight?.properties['heights'] as number[], elevations);
    expect(flight?.properties).not.toHaveProperty('times');
    const table = [
      'time,latitude,longitude,altitude (m)',
      ...flown.map((p) => [time, p.lat, p.lng, p.ele].join()),
    ];
    const [row] = flights(await proposed('a.csv', table.join('\n')));
    expect(row?.properties).not.toHaveProperty('times');
  });

  it('[I216] some points of which have no time come in without times, and it is said', async () => {
    const collection = JSON.parse(geojson()) as { features: { properties: { coordTimes: unknown[] } }[] };
    const times = collection.features[0]?.properties.coordTimes ?? [];
    times[4] = null;
    const proposal = await proposed('a.geojson', JSON.stringify(collection));
    const [flight] = flights(proposal);
    near(flight?.properties['heights'] as number[], elevations);
    expect(flight?.properties).not.toHaveProperty('times');
    expect(proposal.remarks.join(' ')).toContain('its speed stays unknown');
  });
});
