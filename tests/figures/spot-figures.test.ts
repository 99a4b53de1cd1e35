import { describe, expect, test } from 'vitest';
import { destination } from '../../src/figures/geometry/earth';
import { allSpotFigures, spotFigures } from '../../src/figures/spot-figures';
import { focalLengthsAlong } from '../../src/figures/spot/focal-lengths-along';
import { inspectPath } from '../../src/figures/spot/inspect-path';
import { outlookOf } from '../../src/figures/outlook';
import { pathsOf } from '../../src/figures/traffic/paths';
import { contentsOf, plainKit, plainSubject, runwayFeature, spotFeature } from '../support/contents';

const a = [8.5, 47.4] as const;
const azimuth = 118;
const runway = runwayFeature('rwy', a, destination(a, azimuth, 1700), [
  { designator: '12' },
  { designator: '30' },
]);
const beside = (along: number, off: number) => destination(destination(a, azimuth, along), azimuth + 90, off);
const morning = Date.parse('2026-06-21T06:30:00Z');
const evening = Date.parse('2026-06-21T17:30:00Z');

function fieldWith(...spots: readonly (readonly [number, number])[]) {
  return contentsOf([runway, ...spots.map((at, i) => spotFeature(`spot${i}`, at))], {
    site: { elevation: 430 },
    subjects: [plainSubject],
    kit: plainKit,
  });
}

function onlySpot(at: readonly [number, number]) {
  const contents = fieldWith(at);
  const spot = contents.spots[0];
  if (!spot) throw new Error('expected a spot');
  return {
    contents,
    spot,
    outlook: outlookOf(contents, null),
    paths: pathsOf(contents, (kind) => kind !== 'circuit', null),
  };
}

describe('a spot beside a runway', () => {
  test.each([
    [0.4, null, null],
    [0.6, 'right', 'south-west'],
    [-0.4, null, null],
    [-0.6, 'left', 'north-east'],
    [300, 'right', 'south-west'],
    [-300, 'left', 'north-east'],
  ] as const)('[F120] %d m to the right of the line: side %s, named %s', (off, side, compassSide) => {
    const { spot, outlook } = onlySpot(beside(-800, off));
    const seen = spotFigures(spot, [], outlook, [morning])[0]?.runways[0];
    expect(seen).toMatchObject({ id: 'rwy', side, compassSide });
    expect(seen?.centrelineDistance).toBeCloseTo(Math.abs(off), 2);
    expect(seen?.station).toBeCloseTo(-800, 1);
  });

  test('[F121] the sun is that of the spot, one answer for each moment; what the sun does not touch is the same', () => {
    const { spot, outlook, paths } = onlySpot(beside(300, 350));
    const [a1, b1] = spotFigures(spot, paths, outlook, [morning, evening]);
    const alone = spotFigures(spot, paths, outlook, [evening])[0];
    expect(b1).toEqual(alone);
    expect(a1?.sun.azimuth).toBeLessThan(180);
    expect(b1?.sun.azimuth).toBeGreaterThan(180);
    a1?.paths.forEach((path, i) => {
      const { station, focalLength, aspect } = b1?.paths[i]?.closest ?? {};
      expect(path.closest).toMatchObject({ station, focalLength, aspect });
      expect(path.closest.lightAngle).not.toBeCloseTo(b1?.paths[i]?.closest.lightAngle ?? NaN, 1);
    });
  });

  test('[F122] any point of a path can be inspected: the nearest sample', () => {
    const { spot, outlook, paths } = onlySpot(beside(300, 350));
    const [arrival] = paths;
    if (!arrival) throw new Error('expected an arrival');
    const look = (station: number) => inspectPath(spot, arrival, station, outlook, evening);
    expect(look(1009).station).toBe(1000);
    expect(look(1011).station).toBe(1020);
    expect(look(99_999).station).toBe(10_000);
    const { closest } = spotFigures(spot, paths, outlook, [evening])[0]?.paths[0] ?? {};
    expect(look(closest?.station ?? NaN)).toEqual(closest);
  });

  test('[F123] the sector holds the usable samples, in the order in which the aircraft passes', () => {
    const { spot, outlook, paths } = onlySpot(beside(-1500, 500));
    const [arrival] = paths;
    if (!arrival) throw new Error('expected an arrival');
    const seen = spotFigures(spot, [arrival], outlook, [evening])[0]?.paths[0];
    const runs = seen?.sector.runs ?? [];
    expect(runs).toHaveLength(1);
    const [run] = runs;
    // From north-west to south-east past a spot in the south-west: bearings turn to the right.
    const { bearings = [], focalLengths = [], from = NaN } = run ?? {};
    const turned = bearings.map((b) => (b + 180) % 360);
    expect(turned).toEqual([...turned].sort((x, y) => x - y));
    expect(Math.max(...focalLengths)).toBeLessThanOrEqual(1.5 * 560);
    const all = focalLengthsAlong(arrival, seen);
    expect(all).toHaveLength(arrival.samples.count);
    expect(all[from]).toBe(focalLengths[0]);
    expect(all[from - 1]).toBe(Infinity);
    expect([...all].filter((f) => f < Infinity)).toEqual(focalLengths);
  });

  test('[F124] a sample stands for half the way to either neighbour: together they are the whole path', () => {
    for (const { samples } of onlySpot(a).paths) {
      const whole = Math.abs((samples.station[samples.count - 1] ?? NaN) - (samples.station[0] ?? NaN));
      expect(samples.share.reduce((sum, share) => sum + share, 0)).toBeCloseTo(whole, 6);
      expect(samples.share[0]).toBeLessThanOrEqual(10);
    }
  });

  test('[F125] while one spot is dragged the figures of the others stay the same objects', () => {
    const contents = fieldWith(beside(300, 350), beside(900, -250));
    const paths = pathsOf(contents, () => true, null);
    const before = allSpotFigures(contents, paths, [morning, evening], null);
    const [dragged, resting] = contents.spots;
    if (!dragged || !resting) throw new Error('expected two spots');
    const moved = { ...contents, spots: [{ ...dragged, position: beside(320, 360) }, resting] };
    const after = allSpotFigures(
      moved,
      pathsOf(moved, () => true, null),
      [morning, evening],
      null,
    );
    expect(after[1]).toBe(before[1]);
    expect(after[0]?.[0]?.paths[0]?.closest.slantRange).not.toBe(
      before[0]?.[0]?.paths[0]?.closest.slantRange,
    );
    expect(allSpotFigures(contents, paths, [morning], null)[1]).not.toBe(before[1]);
  });
});
