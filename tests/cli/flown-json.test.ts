import { describe, expect, it } from 'vitest';
import { readArguments } from '../../src/cli/arguments';
import { flownJson } from '../../src/cli/flown-json';
import { pathsOf } from '../../src/figures/traffic/paths';
import { placeProblems } from '../../src/figures/checks/place-checks';
import { contentsOf } from '../support/contents';
import { arrivalOf24, departureOf06, madeFlight, madeRunway } from '../support/made-flights';

const arrival = { glide: 3.2, crossing: 21, speed: 66, offset: 4, rolling: 5, noise: 1 };
const departure = { liftOff: 1280, gradient: 0.09, speed: 74, rolling: 5, noise: 1 };
const many = (count: number, make: (i: number) => unknown) =>
  Array.from({ length: count }, (_, i) => make(i));
const arrivals = (count: number) =>
  many(count, (i) => madeFlight(`a${i}`, arrivalOf24({ ...arrival, seed: i + 1 })));
const departures = (count: number) =>
  many(count, (i) => madeFlight(`d${i}`, departureOf06({ ...departure, seed: i + 1 })));

describe('what --flown adds', () => {
  it('[L20] the members of the design, and no others', () => {
    const read = readArguments(['x.geojson', '--flown'], 0);
    expect(read.ok && read.value.flown).toBe(true);
    const { flown, otherTracks } = flownJson(
      contentsOf([madeRunway.feature, ...arrivals(6), ...departures(5)]),
      null,
    );
    expect(otherTracks).toBe(0);
    expect(flown.map((f) => Object.keys(f).join(' '))).toEqual([
      'runway end kind tracks glide touchdown stations',
      'runway end kind tracks glide liftOff gradient stations',
    ]);
    expect(flown[0]).toMatchObject({ runway: 'r1', end: 1, kind: 'arrival', tracks: 6 });
    expect(flown[1]).toMatchObject({ runway: 'r1', end: 0, kind: 'departure', tracks: 5, glide: null });
    expect(Object.keys(flown[0]?.glide ?? {}).sort()).toEqual(['high', 'low', 'median']);
    const station = flown[0]?.stations.find((s) => s.station === 2000);
    expect(Object.keys(station ?? {})).toEqual(['station', 'height', 'offset', 'speed']);
    expect(station?.height).toHaveLength(3);
  });

  it('[L21] four of a kind teach nothing and are counted', () => {
    expect(flownJson(contentsOf([madeRunway.feature, ...arrivals(4)]), null)).toEqual({
      flown: [],
      otherTracks: 4,
    });
  });

  it('[L22] touchdown is signed: beyond the threshold is positive, before it negative', () => {
    const short = { ...arrival, crossing: 4, rolling: 5.5, noise: 0 };
    const early = many(5, (i) => madeFlight(`s${i}`, arrivalOf24({ ...short, seed: i })));
    const [long] = flownJson(contentsOf([madeRunway.feature, ...arrivals(5)]), null).flown;
    const [before] = flownJson(contentsOf([madeRunway.feature, ...early]), null).flown;
    expect(long?.touchdown?.median).toBeGreaterThan(100);
    expect(before?.touchdown?.median).toBeLessThan(0);
  });

  it('[L23] hundreds of flights all teach; the first 300 and whatever is drawn are looked at from the spots', () => {
    const straight = { along: 0, offset: 0, height: 300, time: 0 };
    const drawn = madeFlight('mine', [straight, { ...straight, along: 4000 }], false);
    drawn.properties = { ...drawn.properties, source: 'drawn' } as typeof drawn.properties;
    const contents = contentsOf([madeRunway.feature, ...arrivals(330), drawn]);
    expect(flownJson(contents, null).flown[0]?.tracks).toBe(330);
    const paths = pathsOf(contents, (kind) => kind === 'flight-path', null);
    expect(paths).toHaveLength(301);
    expect(paths.at(-1)?.ref.path).toBe('mine');
    expect(placeProblems(contents)).toMatchObject([
      { id: null, used: true, reason: expect.stringContaining('30 more') as string },
    ]);
  });
});
