import { describe, expect, it } from 'vitest';
import { beyondWords, fewWords, groupName, spreadWords } from '../../../src/ui/flown/words';
import { bandShapes } from '../../../src/ui/flown/band-shapes';
import { contentsOf } from '../../support/contents';
import { madeRunway } from '../../support/made-flights';

const contents = contentsOf([madeRunway.feature]);
const metres = (m: number) => `${Math.round(m)} m`;

describe('[L26] what really flies, in words', () => {
  it('says how many are missing', () => {
    const few = [
      { runway: 'r1', end: 1, kind: 'arrival', flights: 2, needed: 5 },
      { runway: 'r1', end: 0, kind: 'departure', flights: 1, needed: 5 },
    ] as const;
    expect(fewWords(contents, { flown: [], uses: [], few, other: 0 })).toEqual([
      '24 arrivals: 5 flights of one kind are needed; there are 2.',
      '06 departures: 5 flights of one kind are needed; there is 1.',
    ]);
  });

  it('names an end, a spread, and on which side of the threshold they touch down', () => {
    expect(groupName(contents, { runway: 'r1', end: 0, kind: 'circuit' })).toBe('06 circuits');
    expect(spreadWords({ median: 3.21, low: 3.1, high: 3.3 }, (v) => v.toFixed(1))).toBe('3.2 (3.1 to 3.3)');
    expect(spreadWords({ median: 3, low: 3, high: 3 }, (v) => v.toFixed(1))).toBe('3.0');
    expect(beyondWords(312, metres)).toBe('312 m beyond the threshold');
    expect(beyondWords(-40, metres)).toBe('40 m before the threshold');
  });
});

describe('[L27] the band of heights', () => {
  const stations = [0, 1000, 2000].map((station) => ({
    station,
    height: [station / 20, station / 19, station / 18] as const,
    offset: null,
    speed: null,
  }));

  it('an arrival flies to the right, towards the threshold; a departure away from its start', () => {
    const path = [{ station: 0, height: 10 }];
    expect(bandShapes(stations, path, true)?.path).toMatch(/^M316\.0/);
    expect(bandShapes(stations, path, false)?.path).toMatch(/^M4\.0/);
  });

  it('one station is no band', () => {
    expect(bandShapes(stations.slice(0, 1), [], true)).toBeNull();
  });
});
