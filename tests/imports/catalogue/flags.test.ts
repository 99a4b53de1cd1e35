import { describe, expect, it } from 'vitest';
import { flagsOf } from '../../../src/imports/catalogue/flags';
import type { RunwayRow } from '../../../src/cli/catalogue/read-airfields';
import { destination } from '../../../src/figures/geometry/earth';
import type { Position } from '../../../src/survey/document';

const instant = Date.UTC(2026, 1, 16);
// Declination here is 1.0 degrees east (check values, London).
const london: Position = [-0.4614, 51.4775];

/** A runway of 2000 m from `from` at 64 degrees true, 63 magnetic: 06/24. */
function row(
  over: Partial<RunwayRow> = {},
  designators = ['06', '24'],
  from: Position = london,
  metres = 2000,
): RunwayRow {
  const end = (designator: string | undefined, position: Position) => ({
    designator: designator ?? '',
    position,
    elevation: null,
    displaced: 0,
  });
  return {
    length: 2000,
    width: 45,
    surface: '',
    ends: [end(designators[0], from), end(designators[1], destination(from, 64, metres))],
    headings: [64, 244],
    flags: [],
    ...over,
  };
}
const flags = (r: RunwayRow, airfield: Position = london) => flagsOf(r, airfield, 25, instant);
const displaced = (r: RunwayRow, m: number): RunwayRow => {
  const [a, b] = r.ends;
  return { ...r, ends: [a && { ...a, displaced: m }, b] };
};

describe('checks of the data when the catalogue is built', () => {
  it('[C8] finds nothing wrong with a runway that is in order', () => {
    expect(flags(row())).toEqual([]);
    expect(flags(row({ length: 2190 }))).toEqual([]);
    expect(flags(row({ length: null }))).toEqual([]);
  });

  it('[C8] zero length: both ends at one point, or less than a metre apart', () => {
    expect(flags(row({}, ['06', '24'], london, 0))).toEqual([{ kind: 'zero-length' }]);
    expect(flags(row({}, ['06', '24'], london, 0.6))).toEqual([{ kind: 'zero-length' }]);
  });

  it.each([2250, 1800])('[C8] a published length of %d m is more than 10 % off', (length) => {
    expect(flags(row({ length }))).toEqual([
      { kind: 'length-off', measured: expect.closeTo(2000, 1) as number },
    ]);
  });

  it('[C8] tells points at the landing thresholds from a wrong length', () => {
    const kinds = (r: RunwayRow) => flags(r).map((f) => f.kind);
    expect(kinds(displaced(row({ length: 2300 }), 300))).toEqual(['at-thresholds']);
    // Less than 10 % off, yet the displaced threshold explains it.
    expect(kinds(displaced(row({ length: 2150 }), 150))).toEqual(['at-thresholds']);
    expect(kinds(displaced(row({ length: 2000 }), 300))).toEqual([]);
    expect(kinds(displaced(row({ length: 2600 }), 300))).toEqual(['length-off']);
  });

  it('[C8] an end more than 10 km from its airfield, also when it is the only one known', () => {
    const away = destination(london, 200, 12_000);
    expect(flags(row(), away)[0]).toMatchObject({ kind: 'far-away' });
    const one = row();
    expect(flags({ ...one, ends: [null, one.ends[1]], headings: [null, 244] }, away)).toMatchObject([
      { kind: 'far-away' },
    ]);
    expect(flags(row(), destination(london, 200, 7000))).toEqual([]);
  });

  it('[C8] ends swapped: number and published heading both against the line', () => {
    expect(flags(row({ headings: [244, 64] }, ['24', '06']))).toEqual([
      { kind: 'ends-swapped', magnetic: expect.closeTo(63, 0) as number },
    ]);
  });

  it('[C8] an opposite number alone is a designator that does not fit', () => {
    expect(flags(row({}, ['24', '06']))).toMatchObject([{ kind: 'designator-off' }]);
  });

  it('[C8] a number may be one off, not two; either end counts', () => {
    expect(flags(row({}, ['05', '23']))).toEqual([]);
    expect(flags(row({}, ['07L', '25R']))).toEqual([]);
    expect(flags(row({}, ['08', '26']))).toMatchObject([
      { kind: 'designator-off', magnetic: expect.closeTo(63, 0) as number },
    ]);
    expect(flags(row({}, ['06', '14']))).toMatchObject([{ kind: 'designator-off' }]);
  });

  it('[C8] does not judge ends without a number', () => {
    expect(flags(row({}, ['NE', 'SW']))).toEqual([]);
    expect(flags(row({}, ['H1', '']))).toEqual([]);
  });

  it('[C8] numbers counted from true north are right where that is the rule or the T says so', () => {
    // 82.5 north: 50 degrees of west declination; 64 true is 114 magnetic or so.
    const alert: Position = [-62.28, 82.52];
    expect(flags(row({}, ['06', '24'], alert), alert)).toEqual([]);
    expect(flags(row({}, ['06T', '24T'], alert), alert)).toEqual([]);
    expect(flags(row({}, ['03T', '21T'], alert), alert)).toMatchObject([{ kind: 'designator-off' }]);
    // Johannesburg, declination 20.7 west: 64 true is 85 magnetic, and no excuse without a T.
    const south: Position = [28.246, -26.1392];
    expect(flags(row({}, ['06', '24'], south), south)).toMatchObject([{ kind: 'designator-off' }]);
    expect(flags(row({}, ['06T', '24T'], south), south)).toEqual([]);
    expect(flags(row({}, ['08', '26'], south), south)).toEqual([]);
  });
});
