import { describe, expect, test } from 'vitest';
import { destination } from '../../../src/figures/geometry/earth';
import { sightProfile } from '../../../src/figures/sight/profile';
import { inspectPath } from '../../../src/figures/spot/inspect-path';
import { outlookOf } from '../../../src/figures/outlook';
import { pathsOf } from '../../../src/figures/traffic/paths';
import {
  contentsOf,
  feature,
  plainKit,
  plainSubject,
  runwayFeature,
  spotFeature,
} from '../../support/contents';
import { seeded } from '../../support/tolerance';

const west = [8.5, 47.4] as const;
const east = destination(west, 90, 2400);
const ends = [
  { designator: '09', elevation: 400 },
  { designator: '27', elevation: 400 },
] as const;
const instant = Date.UTC(2026, 5, 21, 10);

function looking(obstacles: readonly unknown[], eyeHeight = 1.7) {
  const spot = spotFeature('spot', destination(destination(west, 90, 1200), 180, 300), { eyeHeight });
  const site = { elevation: 400, reference: west, timeZone: 'UTC' };
  const contents = contentsOf([runwayFeature('rwy', west, east, ends), spot, ...obstacles], {
    kit: plainKit,
    subjects: [plainSubject],
    site,
  });
  const outlook = outlookOf(contents, null);
  const path = pathsOf(contents, (kind, _, end) => kind === 'departure' && end === 0, null)[0];
  const [standing] = contents.spots;
  if (!path || !standing) throw new Error('expected a path and a spot');
  const index = (station: number) => path.samples.station.indexOf(station);
  return {
    path,
    at: (station: number) => sightProfile(standing, path, index(station), outlook, instant),
    sample: (station: number) => inspectPath(standing, path, station, outlook, instant),
  };
}
/** A wall along the runway, `off` m south of it. */
const wall = (off: number, height: number, sight = 'solid') => {
  const place = (x: number) => destination(destination(west, 90, x), 180, off);
  const properties = { height, sight, name: 'Wall' };
  return feature('wall', 'obstacle', 'LineString', [place(0), place(2400)], properties);
};

describe('the side view along a line of sight', () => {
  test('[F165] says what is in the way, how low an aircraft shows, and how much higher one must stand', () => {
    // 1.7 m eyes, 100 m away a wall of 4 m, at 300 m an aircraft on the ground.
    const { first, leastVisible, raise, distance, eye, obstacles } = looking([wall(200, 4)]).at(1200);
    expect(first).toMatchObject({ by: 'wall' });
    expect(first?.at).toBeCloseTo(100, 0);
    expect(distance).toBeCloseTo(300, 0);
    expect(eye).toBeCloseTo(401.7, 6);
    // 1.7 + 2.3 x 3 = 8.6 m above the ground; to see the wheels, eyes at 1.5 x 4 = 6 m.
    expect(leastVisible).toBeCloseTo(408.6, 1);
    expect(raise).toBeCloseTo(4.3, 1);
    expect(obstacles).toMatchObject([{ id: 'wall', name: 'Wall', height: 4, hides: true }]);
    const after = looking([wall(200, 4)], 1.7 + raise + 0.01);
    expect(after.sample(1200).score.sight).toBe(1);
    expect(looking([wall(200, 4)], 1.7 + raise - 0.05).sample(1200).score.sight).toBeLessThan(1);
  });

  test('[F166] on open ground, and through a mesh, nothing is in the way', () => {
    expect(looking([]).at(1200)).toMatchObject({ first: null, leastVisible: null, raise: 0, obstacles: [] });
    const { first, obstacles } = looking([wall(200, 4, 'mesh')]).at(1200);
    expect(first).toBeNull();
    expect(obstacles).toMatchObject([{ hides: false }]);
  });

  test('[F167] agrees with the figures at every sample, whatever stands there', () => {
    const random = seeded(165);
    const blocks = Array.from({ length: 25 }, (_, i) => {
      const centre = destination(destination(west, 90, 2400 * random()), 180, 30 + 240 * random());
      const ring = [0, 80, 170, 260].map((turn) =>
        destination(centre, turn + 60 * random(), 5 + 40 * random()),
      );
      const properties = { height: 1 + 12 * random(), sight: i % 5 === 0 ? 'mesh' : 'solid' };
      return feature(`b${i}`, 'obstacle', 'Polygon', [[...ring, ring[0]]], properties);
    });
    const { path, at, sample } = looking(blocks);
    let hidden = 0;
    for (const station of path.samples.station) {
      const { first, wheels, leastVisible, centre } = at(station);
      const { score, hiddenBy } = sample(station);
      if (hiddenBy !== null) {
        hidden++;
        expect(first?.by, `${station}`).toBe(hiddenBy);
      }
      if (score.sight === 1) expect(leastVisible ?? -Infinity).toBeLessThan(wheels + 1e-6);
      if (score.sight === 0) expect(leastVisible).toBeGreaterThan(centre - 1e-6);
    }
    expect(hidden).toBeGreaterThan(20);
  });
});
