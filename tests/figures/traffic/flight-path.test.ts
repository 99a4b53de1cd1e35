import Geodesic from 'geographiclib-geodesic';
import { describe, expect, test } from 'vitest';
import {
  dot,
  earthCentred,
  frameAt,
  minus,
  positionOf,
  type Vec3,
} from '../../../src/figures/geometry/earth';
import type { Path } from '../../../src/figures/traffic/paths';
import { contentsOf, feature, plainSubject } from '../../support/contents';
import { pathNamed } from '../../support/flown';

const line = [
  [179.985, -16.5],
  [-179.992, -16.49],
  [-179.992, -16.49],
  [-179.97, -16.53],
] as const;

function drawn(properties: Record<string, unknown>) {
  return contentsOf([feature('path', 'flight-path', 'LineString', line, properties)], {
    site: { elevation: 40 },
    subjects: [plainSubject],
  });
}

function centreAt({ samples }: Path, i: number) {
  const centre = [...samples.centre.subarray(3 * i, 3 * i + 3)] as unknown as Vec3;
  const position = positionOf(centre);
  return { position, elevation: dot(minus(centre, earthCentred(position, 0)), frameAt(position).up) };
}

describe('drawn and recorded flight paths', () => {
  const length = (i: number, j: number) => {
    const [from, to] = [line[i] ?? line[0], line[j] ?? line[0]];
    return Geodesic.Geodesic.WGS84.Inverse(from[1], from[0], to[1], to[0]).s12 ?? NaN;
  };

  test('[F40] stations in m from the first vertex, over the antimeridian the shorter way', () => {
    const { samples } = pathNamed(drawn({ heights: [300, 250, 250, 90], source: 'drawn' }), 'path');
    const total = length(0, 1) + length(2, 3);
    expect(total).toBeLessThan(8000);
    expect(samples.station[0]).toBe(0);
    expect(samples.station[samples.count - 1]).toBeCloseTo(total, 2);
    expect([...samples.station.slice(0, -1)]).toEqual(
      Array.from({ length: samples.count - 1 }, (_, i) => 20 * i),
    );
  });

  test('[F41] drawn heights are those of the wheels, recorded ones those of the centre', () => {
    const wheels = pathNamed(drawn({ heights: [300, 250, 250, 90], source: 'drawn' }), 'path');
    const centre = pathNamed(drawn({ heights: [300, 250, 250, 90], source: 'receiver' }), 'path');
    expect(centreAt(wheels, 0).elevation).toBeCloseTo(300 + plainSubject.height / 2, 3);
    expect(centreAt(centre, 0).elevation).toBeCloseTo(300, 3);
    // Above the field, which is 40 m above the sea.
    expect(centre.samples.height[0]).toBeCloseTo(260, 6);
    const second = length(0, 1);
    const i = 50;
    expect(centreAt(centre, i).elevation).toBeCloseTo(300 - (50 * 20 * 50) / second, 2);
    const last = centre.samples.count - 1;
    expect(centreAt(centre, last).elevation).toBeCloseTo(90, 3);
    expect(centreAt(centre, last).position[0]).toBeCloseTo(-179.97, 7);
    expect(centreAt(centre, last).position[1]).toBeCloseTo(-16.53, 7);
  });

  test('[F42] on the way the samples lie on the line between the vertices', () => {
    const { samples } = pathNamed(drawn({ heights: [300, 250, 250, 90] }), 'path');
    const geodesic = Geodesic.Geodesic.WGS84.InverseLine(line[0][1], line[0][0], line[1][1], line[1][0]);
    for (const i of [1, 37, 80]) {
      const { lat2, lon2 } = geodesic.Position(20 * i);
      const { position } = centreAt({ samples } as Path, i);
      const miss = Geodesic.Geodesic.WGS84.Inverse(position[1], position[0], lat2 ?? NaN, lon2 ?? NaN).s12;
      expect(miss).toBeLessThan(0.01);
    }
  });

  test('[F43] one height a position, or the path is set aside and said', () => {
    const { flightPaths, problems } = drawn({ heights: [300, 250] });
    expect(flightPaths).toEqual([]);
    expect(problems).toEqual([
      { id: 'path', reason: 'heights: expected 4 heights, one per position, got 2', used: false },
    ]);
  });

  test('[F44] a path that goes nowhere has no samples', () => {
    const contents = contentsOf([
      feature('path', 'flight-path', 'LineString', [line[1], line[2]], { heights: [10, 400] }),
    ]);
    expect(contents.flightPaths).toHaveLength(1);
    expect(() => pathNamed(contents, 'path')).toThrow('expected path, got ');
  });
});
