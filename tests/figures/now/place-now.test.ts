import { describe, expect, it } from 'vitest';
import { destination } from '../../../src/figures/geometry/earth';
import { placeNow } from '../../../src/figures/now/place-now';
import type { Position } from '../../../src/survey/document';
import { contentsOf, spotFeature } from '../../support/contents';

const lane: Position = [18.19, 50.93];
const contents = contentsOf(
  [spotFeature('lane', lane, { eyeHeight: 3 }), spotFeature('gate', destination(lane, 90, 40))],
  { site: { reference: [18.17, 50.93] } },
);
const at = (metres: number, accuracy: number, bearing = 90) =>
  placeNow({ position: destination(lane, bearing, metres), accuracy }, contents);

describe('where one is, by the position of a device', () => {
  it('[F940] arguable: 20 m beside the spot one stands at it, with its eye height; 30 m away in the open not', () => {
    expect(at(20, 5, 0)).toMatchObject({ kind: 'spot', spot: { id: 'lane', eyeHeight: 3 } });
    expect(at(30, 5, 0)).toMatchObject({ kind: 'here', spot: { id: 'here', eyeHeight: 1.7 } });
    // A position that is no better than 40 m may be at the spot.
    expect(at(30, 40, 0)).toMatchObject({ kind: 'spot', spot: { id: 'lane' } });
  });

  it('[F941] arguable: between two spots it is the nearer one', () => {
    expect(at(18, 5)).toMatchObject({ spot: { id: 'lane' } });
    expect(at(22, 5)).toMatchObject({ spot: { id: 'gate' } });
  });

  it('[F942] arguable: known to 500 m it tells no figures: a lens too long or too short would be the price', () => {
    expect(at(0, 500)).toEqual({ kind: 'rough', accuracy: 500 });
    expect(at(0, 100).kind).toBe('spot');
  });

  it('[F943] at home one is away, and how far; a rough position near the field is not called away', () => {
    const home = at(40_000, 20);
    expect(home.kind).toBe('away');
    expect(home.kind === 'away' && home.distance).toBeGreaterThan(38_000);
    expect(at(16_000, 5000).kind).toBe('rough');
  });
});
