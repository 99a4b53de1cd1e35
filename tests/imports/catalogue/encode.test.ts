import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { perDegree, placesPerDegree } from '../../../src/imports/catalogue/columns';
import type { AirfieldRow } from '../../../src/imports/catalogue/encode';
import { inCatalogueOrder } from '../../../src/imports/catalogue/order';
import { airfieldKinds, type CatalogueEnd, type CatalogueRunway } from '../../../src/imports/catalogue/types';
import { everyAirfield } from '../../support/catalogue';
import { asRow, decoded, invented } from './airfields';

const readBack = (rows: readonly AirfieldRow[]) => {
  return everyAirfield(decoded(rows)).map(asRow);
};

const feet = (min: number, max: number) => fc.integer({ min, max }).map((n) => n * 0.3048);
const degrees = (limit: number, per: number) =>
  fc.integer({ min: -limit * per, max: limit * per }).map((n) => n / per);
const word = fc.stringMatching(/^[A-Za-zéÖß][A-Za-z é'()/-]{0,11}$/);
const code = fc.stringMatching(/^[A-Z0-9]{3,4}$/);
const position = fc.tuple(degrees(180, perDegree), degrees(90, perDegree));

const end: fc.Arbitrary<CatalogueEnd> = fc.record({
  designator: fc.oneof(
    fc.stringMatching(/^(0[1-9]|[12]\d|3[0-6])[LCRT]?$/),
    fc.constantFrom('', 'N', 'SE', 'H1', '9', '009'),
  ),
  position,
  elevation: fc.option(feet(-1300, 15_000)),
  displaced: feet(0, 3000),
});
const maybeEnd: fc.Arbitrary<CatalogueEnd | null> = fc.option(end);
const runway: fc.Arbitrary<CatalogueRunway> = fc.record({
  length: fc.option(feet(1, 20_000)),
  width: fc.option(feet(1, 400)),
  surface: fc.constantFrom('', 'asphalt', 'grass'),
  ends: fc.tuple(maybeEnd, maybeEnd),
  flags: fc.array(
    fc.oneof(
      fc.constant({ kind: 'zero-length' as const }),
      fc.record({
        kind: fc.constantFrom('length-off' as const, 'at-thresholds' as const),
        measured: fc.nat(9000),
      }),
      fc.record({ kind: fc.constant('far-away' as const), away: fc.nat(900_000) }),
      fc.record({
        kind: fc.constantFrom('ends-swapped' as const, 'designator-off' as const),
        magnetic: fc.nat(359),
      }),
    ),
    { maxLength: 3 },
  ),
});
const located = (r: CatalogueRunway) => r.ends[0] !== null || r.ends[1] !== null;
const airfield: fc.Arbitrary<AirfieldRow> = fc.record({
  name: word,
  town: fc.oneof(fc.constant(''), word),
  region: fc.constantFrom('GB-ENG', 'US-AK', 'FJ-N'),
  icao: fc.option(fc.stringMatching(/^[A-Z]{4}$/)),
  iata: fc.option(fc.stringMatching(/^[A-Z]{3}$/)),
  localCodes: fc.array(code, { maxLength: 3 }),
  kind: fc.constantFrom(...airfieldKinds),
  position: fc.tuple(degrees(180, placesPerDegree), degrees(90, placesPerDegree)),
  elevation: feet(-1300, 15_000),
  frequencies: fc.array(
    fc.record({
      use: fc.constantFrom('tower', 'atis'),
      mhz: fc.integer({ min: 100, max: 1e6 }).map((k) => k / 1000),
    }),
    { maxLength: 3 },
  ),
  // The width of a runway that is nowhere is not kept.
  runways: fc.array(
    runway.map((r) => (located(r) ? r : { ...r, width: null })),
    { maxLength: 4 },
  ),
});

describe('the catalogue file', () => {
  it('[C1] gives back every airfield that was put in, to the last digit', () => {
    expect(readBack(invented)).toEqual(invented);
  });

  it('[C1] does so for any airfields (seeded)', () => {
    fc.assert(
      fc.property(fc.array(airfield, { maxLength: 6 }), (rows) => {
        expect(readBack(rows)).toEqual(inCatalogueOrder(rows));
      }),
      { seed: 20_260_615, numRuns: 200 },
    );
  });

  it('says the region, the country and the place in the list', () => {
    const third = decoded(invented).catalogue.airfieldAt(2);
    expect(third).toMatchObject({ index: 2, region: 'FJ-N', country: 'FJ' });
  });

  it('counts runways, and those that can be drawn', () => {
    const { catalogue } = decoded(invented);
    const counts = invented.map((_, i) => catalogue.airfieldAt(i));
    expect(counts.map((a) => a.runwayCount)).toEqual([0, 1, 4, 1, 0]);
    expect(counts.map((a) => a.locatedCount)).toEqual([0, 1, 2, 0, 0]);
  });

  it('holds no airfields when there are none', () => {
    expect(decoded([]).catalogue.size).toBe(0);
  });
});
