import { describe, expect, test } from 'vitest';
import { destination } from '../../src/figures/geometry/earth';
import { refractionCoefficient, sinkPerSquareMetre } from '../../src/figures/sight/curvature';
import { feature } from '../support/contents';
import { about, frame, leastInSight, middle } from '../support/sight';
import { PublishedTable } from '../support/tolerance';
import {
  curvatureRows,
  lighthouse,
  refractionRows,
  surveyingSource,
  wallRows,
  wallSource,
} from './fixtures/sight';
import { tolerances } from './tolerances';

/** A wall across the view to the east, `at` m away. */
const wall = (at: number, height: number) => {
  const foot = destination(middle, 90, at);
  const ends = [0, 180].map((bearing) => destination(foot, bearing, 60));
  return feature('wall', 'obstacle', 'LineString', ends, { height, base: 0, sight: 'solid' });
};

describe('lines of sight against published values', () => {
  test('[R60] curvature and refraction of the surveying handbooks', () => {
    const table = new PublishedTable(`curvature (${surveyingSource})`, {
      sinks: tolerances.sinkShare,
      lifts: tolerances.refractionLift,
    });
    for (const { what, distance, k, sinks, limit } of curvatureRows) {
      table.row(`${what} at ${distance} m`);
      table.near('sinks', (sinkPerSquareMetre(frame, k) * distance ** 2 - sinks) / limit, 0);
    }
    for (const { distance, lifts } of refractionRows) {
      table.row(`refraction over ${distance} m`);
      const alone = sinkPerSquareMetre(frame, 0) - sinkPerSquareMetre(frame, 1 / 7);
      table.near('lifts', alone * distance ** 2, lifts);
    }
    table.close(8);
    expect(refractionCoefficient).toBe(0.13);
  });

  test('[R61] what shows over a wall: the rows of gdal_viewshed', () => {
    const table = new PublishedTable(`over a wall (${wallSource})`, { shows: tolerances.leastVisible });
    for (const row of wallRows) {
      table.row(`${row.eye} m over ${row.wall} m at ${row.at} m to ${row.target} m, ${row.coefficient}`);
      const around = about([wall(row.at, row.wall)], row.coefficient / (2 * 6378137));
      table.near('shows', leastInSight(around, [0, 0, row.eye], row.target, 0), row.shows);
    }
    table.close(15);
  });

  test('[R62] the lighthouse over the sea: the earth itself hides', () => {
    // A flat sea as terrain; the horizon of the eye does what a wall would.
    const size = 801;
    const step = 0.0005;
    const sea = {
      columns: size,
      rows: 41,
      west: middle[0] - 10 * step,
      north: middle[1] + 20 * step,
      stepLng: step,
      stepLat: step,
      heights: new Float32Array(size * 41),
    };
    const { eye, distance, height, coefficient } = lighthouse;
    const least = leastInSight(about([], coefficient, sea), [0, 0, eye], distance, 0);
    expect(Math.abs(least - height)).toBeLessThan(0.1);
  });
});
