import { describe, expect, test } from 'vitest';
import { formatWaypoints, parseWaypoints } from '../../src/units/waypoints';

describe('waypoints as text', () => {
  test.each([
    ['51.4775, -0.485, 2500 ft', [-0.485, 51.4775], 762],
    ['51.4775, -0.485, 2500', [-0.485, 51.4775], 762],
    ['51.4775 -0.485 762 m', [-0.485, 51.4775], 762],
    ["ABCDE 51°28.65'N 000°29.10'W 2500", [-0.485, 51.4775], 762],
    ['ABCDE 5128.65N 00029.10W 2500', [-0.485, 51.4775], 762],
    ['512839N 0002906W 2500', [-0.485, 51.4775], 762],
    ['N51 28.65 W000 29.10 2500', [-0.485, 51.4775], 762],
  ])('[F1040] %s', (line, [lng, lat], altitude) => {
    const read = parseWaypoints(`${line}\n\n51.5, -0.6, 100`);
    if (!read.ok) throw new Error(read.reason);
    const [first] = read.waypoints;
    expect(first?.position[0]).toBeCloseTo(lng ?? NaN, 4);
    expect(first?.position[1]).toBeCloseTo(lat ?? NaN, 4);
    expect(first?.altitude).toBeCloseTo(altitude, 1);
  });

  test.each([
    ['51.4775, -0.485\n51, 0, 100', /Line 1/],
    ['51.4775, -0.485, 2500', /two waypoints/],
    ['51, 0, 100\n91, 0, 100', /Line 2/],
    ['', /two waypoints/],
  ])('[F1041] what cannot be read names the line and the mend: %j', (text, reason) => {
    const read = parseWaypoints(text);
    expect(read.ok ? '' : read.reason).toMatch(reason);
  });

  test('[F1042] what is written is read back', () => {
    const line = [
      [-0.485, 51.4775],
      [8.5492001, -47.4647],
    ] as const;
    const read = parseWaypoints(formatWaypoints(line, [762, 30.48]));
    expect(read.ok && read.waypoints.map((w) => w.position)).toEqual(line);
  });
});
