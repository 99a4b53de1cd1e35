import { describe, expect, test } from 'vitest';
import { destination } from '../../../src/figures/geometry/earth';
import { outlookOf } from '../../../src/figures/outlook';
import { groundUnderAircraft } from '../../../src/figures/sight/ground-under-aircraft';
import { sightProfile } from '../../../src/figures/sight/profile';
import type { ElevationGrid } from '../../../src/figures/sight/terrain';
import { pathsOf } from '../../../src/figures/traffic/paths';
import type { Position } from '../../../src/survey/document';
import { contentsOf, plainKit, plainSubject, runwayFeature, spotFeature } from '../../support/contents';
import { seeded } from '../../support/tolerance';
import { cases } from '../../support/thorough';

const west: Position = [8.5, 47.4];
const length = 2400;
const instant = Date.UTC(2026, 5, 21, 10);

/** A plane that rises `rise` m over the runway's length to the east, `base` m high at its west end. */
function tilted(base: number, rise: number): ElevationGrid {
  const [columns, rows, step] = [160, 80, 0.002];
  const heights = new Float32Array(columns * rows);
  const perDegree = rise / (destination(west, 90, length)[0] - west[0]);
  const from = west[0] - 80 * step;
  heights.forEach((_, i) => (heights[i] = base + ((i % columns) * step + from - west[0]) * perDegree));
  return { columns, rows, west: from, north: west[1] + 40 * step, stepLng: step, stepLat: step, heights };
}

interface Field {
  readonly ends: readonly [number | null, number | null];
  readonly terrain: ElevationGrid | null;
  readonly site?: number | null;
  readonly spot?: object;
}

function field({ ends, terrain, site = 400, spot = {} }: Field) {
  const named = ends.map((elevation, i) => ({
    designator: i === 0 ? '09' : '27',
    ...(elevation === null ? {} : { elevation }),
  })) as unknown as readonly [object, object];
  const contents = contentsOf(
    [
      runwayFeature('rwy', west, destination(west, 90, length), named as never),
      spotFeature('spot', destination(destination(west, 90, 900), 180, 300), { eyeHeight: 1.7, ...spot }),
    ],
    {
      kit: plainKit,
      subjects: [plainSubject],
      site: { ...(site === null ? {} : { elevation: site }), reference: west, timeZone: 'UTC' },
    },
  );
  const [standing] = contents.spots;
  if (!standing) throw new Error('expected a spot');
  return { standing, outlook: outlookOf(contents, terrain), paths: pathsOf(contents, () => true, terrain) };
}

const lastGround = (profile: ReturnType<typeof sightProfile>) => profile.ground.at(-1)?.height ?? NaN;

describe('the ground that the side view draws', () => {
  test('[F970] is the pavement where the aircraft is: 406 m half-way between ends stated 400 and 412, whatever the terrain says', () => {
    for (const terrain of [null, tilted(420, 0), tilted(380, 0)]) {
      const { standing, outlook, paths } = field({ ends: [400, 412], terrain });
      const departure = paths.find(({ ref }) => ref.kind === 'departure' && ref.end === 0);
      if (!departure) throw new Error('expected a departure');
      const i = departure.samples.station.indexOf(1200);
      const profile = sightProfile(standing, departure, i, outlook, instant);
      expect(profile.wheels).toBeCloseTo(406, 1);
      expect(lastGround(profile)).toBeCloseTo(406, 1);
    }
  });

  test('[F971] beneath an approach it is the terrain, and without one the threshold as the survey states it', () => {
    const at = (terrain: ElevationGrid | null) => {
      const { standing, outlook, paths } = field({ ends: [400, 412], terrain });
      const arrival = paths.find(({ ref }) => ref.kind === 'arrival' && ref.end === 0);
      if (!arrival) throw new Error('expected an arrival');
      return lastGround(
        sightProfile(standing, arrival, arrival.samples.station.indexOf(1000), outlook, instant),
      );
    };
    expect(at(tilted(390, 0))).toBeCloseTo(390, 3);
    expect(at(null)).toBeCloseTo(400, 1);
  });

  test('[F972] at the eye it is what the spot stands on, also where it states another height than the terrain has', () => {
    const { standing, outlook, paths } = field({
      ends: [400, 400],
      terrain: tilted(400, 0),
      spot: { ground: 409 },
    });
    const [path] = paths;
    if (!path) throw new Error('expected a path');
    const profile = sightProfile(standing, path, 0, outlook, instant);
    expect(profile.eye).toBeCloseTo(410.7, 6);
    expect(profile.ground[0]?.height).toBeCloseTo(409, 6);
    // Farther out it is the terrain's.
    expect(profile.ground[120]?.height).toBeCloseTo(400, 3);
  });

  test('[F973] holds for any slope, heights stated at both, one or neither end, and terrain or none: never is an aircraft in the earth', () => {
    const random = seeded(970);
    let looked = 0;
    for (let round = 0; round < cases(40); round++) {
      const base = 300 + 200 * random();
      // Up to 2 % of slope, as runways have at most (ICAO Annex 14 Vol I, 3.1.13 and 3.1.14: from memory).
      const rise = (random() - 0.5) * 0.04 * length;
      // What is stated need not be what the terrain has: a model of the ground is some metres off.
      const off = () => (random() - 0.5) * 8;
      const stated = [random() < 0.5, random() < 0.5];
      const ends = [stated[0] ? base + off() : null, stated[1] ? base + rise + off() : null] as const;
      const terrain = random() < 0.5 ? tilted(base, rise) : null;
      const { standing, outlook, paths } = field({ ends, terrain, site: random() < 0.5 ? base : null });
      for (const path of paths) {
        if (path.ref.kind !== 'arrival' && path.ref.kind !== 'departure') continue;
        path.samples.station.forEach((station, i) => {
          // Over the runway and 300 m about it: farther off a hill may well stand in the glide path.
          const beyond = path.ref.kind === 'arrival' ? station > 300 : station > length + 300;
          if (beyond || i % 11 !== 0) return;
          const profile = sightProfile(standing, path, i, outlook, instant);
          looked++;
          const where = `${round} ${path.ref.path} ${station}`;
          expect(profile.wheels - lastGround(profile), where).toBeGreaterThan(-0.02);
          // Rolling, it is on the ground, not over it either.
          if (path.samples.onGround[i] === 1)
            expect(profile.wheels - lastGround(profile), where).toBeLessThan(0.3);
          expect(lastGround(profile)).toBeCloseTo(groundUnderAircraft(path, i, profile.centre, outlook), 6);
        });
      }
    }
    expect(looked).toBeGreaterThan(cases(1000));
  });
});
