import { describe, expect, test } from 'vitest';
import { destination, groundLine } from '../../../../src/figures/geometry/earth';
import { contentsOf, feature, plainSubject } from '../../../support/contents';
import { pathNamed } from '../../../support/flown';
import { positionOf } from '../../../../src/figures/geometry/earth';

const start = [8.5, 47.4] as const;
const corner = destination(start, 90, 9000);
const end = destination(corner, 0, 8000);

function flown(line: readonly (readonly [number, number])[], turnBank: number | null = 25) {
  const contents = contentsOf(
    [
      feature('p', 'flight-path', 'LineString', line, {
        heights: line.map((_, i) => 1200 - 300 * i),
        turnBank,
      }),
    ],
    { site: { elevation: 400 }, subjects: [{ ...plainSubject, approachSpeed: 72 }] },
  );
  const { samples } = pathNamed(contents, 'p');
  const degrees = (x: number) => (x * 180) / Math.PI;
  return {
    bank: Array.from(samples.bank, degrees),
    height: Array.from(samples.height),
    length: samples.station.at(-1) ?? NaN,
    positions: Array.from({ length: samples.count }, (_, i) =>
      positionOf([...samples.centre.subarray(3 * i, 3 * i + 3)] as unknown as readonly [
        number,
        number,
        number,
      ]),
    ),
  };
}

describe('a published path', () => {
  test('[F1045] is rounded at its waypoints by bank and speed: it passes inside the corner', () => {
    const { bank, positions, length } = flown([start, corner, end]);
    // r = v2 / (g tan 25); the arc passes r (sqrt 2 - 1) inside a right angle.
    const radius = 72 ** 2 / (9.80665 * Math.tan((25 * Math.PI) / 180));
    const nearest = Math.min(...positions.map((p) => groundLine(p, corner).distance));
    expect(nearest).toBeCloseTo(radius * (Math.SQRT2 - 1), -1);
    expect(length).toBeCloseTo(17_000 - 2 * radius + (Math.PI / 2) * radius, -1);
    // To the left: the left wing down.
    expect(Math.min(...bank)).toBeCloseTo(-25, 1);
    expect(Math.max(...bank)).toBeLessThan(0.01);
    expect(groundLine(positions.at(-1) ?? start, end).distance).toBeLessThan(2);
  });

  test('[F1046] holds its altitudes at the waypoints and changes evenly in between', () => {
    const { height } = flown([start, corner, end]);
    expect(height[0]).toBeCloseTo(800 + 4.5, 1);
    expect(height.at(-1)).toBeCloseTo(200 + 4.5, 1);
    for (const [i, h] of height.slice(1).entries()) expect(h).toBeLessThan((height[i] ?? 0) + 0.01);
  });

  test('[F1047] a leg too short for the turn is turned more tightly, a waypoint typed twice costs nothing', () => {
    const near = destination(corner, 0, 500);
    const { bank, positions } = flown([start, corner, corner, near]);
    expect(Math.min(...bank)).toBeLessThan(-30);
    expect(groundLine(positions.at(-1) ?? start, near).distance).toBeLessThan(2);
    expect(bank.every(Number.isFinite)).toBe(true);
  });

  test('[F1048] without a bank it is what was drawn, corner to corner', () => {
    const { positions, bank } = flown([start, corner, end], null);
    expect(Math.min(...positions.map((p) => groundLine(p, corner).distance))).toBeLessThan(20);
    expect(bank.every((b) => b === 0)).toBe(true);
  });
});
