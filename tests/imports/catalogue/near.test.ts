import geodesic from 'geographiclib-geodesic';
import { describe, expect, it } from 'vitest';
import { airfieldsNear } from '../../../src/imports/catalogue/near';
import type { Position } from '../../../src/survey/document';

const fields = (places: readonly Position[]) => ({
  fields: {
    lng: places.map(([lng]) => Math.round(lng * 1e6)),
    lat: places.map(([, lat]) => Math.round(lat * 1e6)),
  } as never,
});
const { WGS84 } = geodesic.Geodesic;
const metres = (a: Position, b: Position) => WGS84.Inverse(a[1], a[0], b[1], b[0]).s12 ?? NaN;

describe('[I130] the airfields near a place', () => {
  /** A fixed scatter of places, the poles, the antimeridian and the equator among them. */
  const places: Position[] = [];
  for (let i = 0; i < 4000; i++) {
    const lat = Math.asin(2 * ((i * 0.618034) % 1) - 1) * (180 / Math.PI);
    places.push([((i * 137.50776) % 360) - 180, lat]);
  }

  it('are all within the distance and no other, nearest first (Karney’s geodesics)', () => {
    for (const from of [
      [18.17, 50.93],
      [179.99, -16.5],
      [-179.99, 68],
      [10, 89],
      [-60, -0.01],
    ] as const)
      for (const reach of [30_000, 400_000]) {
        const near = airfieldsNear(fields(places), from, reach);
        const wanted = places.flatMap((place, index) => (metres(from, place) <= reach ? [index] : []));
        expect(near.map(({ index }) => index).sort((a, b) => a - b)).toEqual(wanted);
        for (const { index, distance } of near)
          expect(Math.abs(distance - metres(from, places[index] as Position))).toBeLessThan(
            0.002 * distance + 1,
          );
        expect(near.map(({ distance }) => distance)).toEqual(
          near.map(({ distance }) => distance).sort((a, b) => a - b),
        );
      }
  });
});
