import { describe, expect, test } from 'vitest';
import { destination } from '../../../src/figures/geometry/earth';
import { figuresFor } from '../../../src/figures/figures-for';
import { grounded } from '../../../src/figures/sight/grounded';
import { fieldElevation, pathsOf } from '../../../src/figures/traffic/paths';
import type { ElevationGrid } from '../../../src/figures/sight/terrain';
import {
  contentsOf,
  feature,
  plainKit,
  plainSubject,
  runwayFeature,
  spotFeature,
} from '../../support/contents';
import { placesOf } from '../../support/flown';

const a = [8.5, 47.4] as const;
const b = destination(a, 90, 2400);
const taxi = [destination(a, 180, 200), destination(b, 180, 200)] as const;
const apron = [0, 90, 180, 270, 0].map((bearing) => destination(destination(a, 160, 500), bearing, 60));
const noon = Date.parse('2026-06-21T10:00:00Z');

/** Ground that rises by 1 in 100 towards the east, from 500 m at 8.4 degrees: 0.2 degrees wide. */
const rise = (east: number) => 500 + east * 0.01;
const hill: ElevationGrid = {
  columns: 41,
  rows: 41,
  west: 8.4,
  north: 47.5,
  stepLng: 0.005,
  stepLat: 0.005,
  heights: Float32Array.from({ length: 41 * 41 }, (_, i) => rise((i % 41) * 0.005 * 75_459)),
};
/** m above the sea at a place of that ground: 75,459 m a degree at 47.4 N (WGS84). */
const at = ([lng]: readonly [number, number]) => rise((lng - 8.4) * 75_459);

const survey = (
  ends: readonly [object, object] = [{}, {}],
  site: Record<string, unknown> = {},
  more: unknown[] = [],
) =>
  contentsOf(
    [
      runwayFeature('r', a, b, [
        { designator: '09', ...ends[0] },
        { designator: '27', ...ends[1] },
      ]),
      feature('taxi', 'taxi-route', 'LineString', taxi, { name: 'A' }),
      feature('apron', 'apron', 'Polygon', [apron], { name: 'West' }),
      ...more,
    ],
    { site: { reference: a, ...site }, kit: plainKit, subjects: [plainSubject] },
  );
const endsOf = (contents: ReturnType<typeof survey>, grid: ElevationGrid | null) =>
  grounded(contents, grid).runways[0]?.ends.map(({ elevation }) => elevation);

describe('a survey that states no heights, on terrain', () => {
  test('[F500] hides nothing behind the ground it lies on', () => {
    const spot = spotFeature('s', destination(destination(a, 90, 1200), 0, 400), { eyeHeight: 1.7 });
    const contents = survey([{}, {}], {}, [spot]);
    const paths = figuresFor(contents, noon, hill).spots[0]?.paths ?? [];
    expect(paths.map(({ ref }) => ref.path)).toHaveLength(9);
    for (const { ref, visibleShare, hidden } of paths) {
      expect(hidden, ref.path).toEqual([]);
      expect(visibleShare ?? 1, ref.path).toBeGreaterThan(0.95);
    }
  });

  test('[F501] its runways, taxi routes and parked aircraft stand on the terrain', () => {
    const contents = survey();
    const [runway] = contents.runways;
    if (!runway) throw new Error('expected a runway');
    const paths = pathsOf(contents, () => true, hill);
    const heights = (name: string) => {
      const path = paths.find(({ ref }) => ref.path === name);
      if (!path) throw new Error(`expected ${name}`);
      return placesOf(path, runway).map(({ elevation }) => elevation - plainSubject.height / 2);
    };
    expect(heights('r/09/departure')[0]).toBeCloseTo(at(a), 0);
    expect(heights('r/27/departure')[0]).toBeCloseTo(at(b), 0);
    expect(heights('taxi/forward')[0]).toBeCloseTo(at(a), 0);
    expect(heights('taxi/forward').at(-1)).toBeCloseTo(at(b), 0);
    expect(heights('apron')[0]).toBeCloseTo(at(destination(destination(a, 160, 500), 0, 0)), 0);
    expect(fieldElevation(grounded(contents, hill))).toBeCloseTo(at(b), 0);
  });
});

describe('the ladder of heights', () => {
  test.each([
    ['what both ends state stays', [{ elevation: 431 }, { elevation: 428 }], {}, [431, 428]],
    ['what one end states stays, the other takes the terrain', [{ elevation: 431 }, {}], {}, [431, at(b)]],
    ['an end at sea level is stated', [{ elevation: 0 }, {}], {}, [0, at(b)]],
    ['the terrain goes before the field', [{}, {}], { elevation: 431 }, [at(a), at(b)]],
  ] as const)('[F502] %s', (_, ends, site, expected) => {
    const found = endsOf(survey(ends, site), hill);
    expected.forEach((height, i) => expect(found?.[i]).toBeCloseTo(height, 0));
  });

  test('[F503] beyond the terrain, and without any, it is the other end, then the field', () => {
    const elsewhere = { ...hill, west: 9.4 };
    for (const grid of [elsewhere, null]) {
      const silent = survey([{}, {}], { elevation: 431 });
      expect(endsOf(silent, grid)).toEqual([null, null]);
      expect(fieldElevation(grounded(silent, grid))).toBe(431);
      expect(fieldElevation(grounded(survey([{}, { elevation: 7 }]), grid))).toBe(7);
    }
  });

  test('[F504] a field without runways lies on the terrain at its reference; its own word stays', () => {
    const bare = (site: object) => contentsOf([], { site: { reference: a, ...site } });
    expect(fieldElevation(grounded(bare({}), hill))).toBeCloseTo(at(a), 0);
    expect(fieldElevation(grounded(bare({ elevation: 12 }), hill))).toBe(12);
  });

  test('[F505] it is the same survey until something of it changes', () => {
    const contents = survey();
    expect(grounded(contents, null)).toBe(contents);
    const stated = survey([{ elevation: 1 }, { elevation: 2 }], { elevation: 3 });
    expect(grounded(stated, hill)).toBe(stated);
    expect(grounded({ ...contents }, hill).runways[0]).toBe(grounded(contents, hill).runways[0]);
  });

  test('[F506] heights of some things beside a field of unknown height are a doubt', () => {
    const standing = [spotFeature('s', b, { ground: 512 })];
    const doubts = (contents: ReturnType<typeof survey>, grid: ElevationGrid | null) =>
      figuresFor(contents, noon, grid).problems.filter(({ reason }) => reason.includes('counts as 0 m'));
    expect(doubts(survey([{}, {}], {}, standing), null)).toHaveLength(1);
    expect(doubts(survey([{}, {}], {}, standing), hill)).toEqual([]);
    expect(doubts(survey([{}, {}], { elevation: 500 }, standing), null)).toEqual([]);
    expect(doubts(survey(), null)).toEqual([]);
  });
});
