import { describe, expect, test } from 'vitest';
import { figuresFor } from '../../../src/figures/figures-for';
import { destination, groundLine, positionOf } from '../../../src/figures/geometry/earth';
import { middleOf } from '../../../src/figures/geometry/middle-of';
import { pathsOf } from '../../../src/figures/traffic/paths';
import type { Position } from '../../../src/survey/document';
import {
  contentsOf,
  feature,
  plainKit,
  plainSubject,
  runwayFeature,
  spotFeature,
} from '../../support/contents';

const a = [8.5, 47.4] as const;
const to = (bearing: number, distance: number) => destination(a, bearing, distance);
const noon = Date.parse('2026-06-21T11:00:00Z');

const route = feature('alpha', 'taxi-route', 'LineString', [a, to(120, 410), to(100, 700)], {
  name: 'Alpha',
});
const square = (middle: Position, half: number): Position[] =>
  [45, 135, 225, 315, 45].map((bearing) => destination(middle, bearing, half * Math.SQRT2));
const apron = (heading: number | null) =>
  feature('stand', 'apron', 'Polygon', [square(to(90, 300), 40)], { name: 'North', heading });
const runway = runwayFeature('rwy', to(0, 200), to(90, 1000), [
  { designator: '12', elevation: 430 },
  { designator: '30', elevation: 430 },
]);
/** 30 m long, 26 m of span; 9 m high. */
const sunside = { subjects: [plainSubject], kit: plainKit, site: { elevation: 432 } };

const onTheGround = (...features: unknown[]) =>
  pathsOf(contentsOf([runway, ...features], sunside), (kind) => kind === 'taxi' || kind === 'parked', null);

describe('aircraft on the ground', () => {
  test('[F309] a taxi route is two paths, an apron one, behind all others', () => {
    const drawn = feature('drawn', 'flight-path', 'LineString', [a, to(10, 500)], { heights: [500, 480] });
    const all = pathsOf(contentsOf([apron(40), route, drawn, runway], sunside), () => true, null);
    expect(all.slice(-4).map((p) => [p.ref.path, p.ref.kind, p.name])).toEqual([
      ['drawn', 'flight-path', 'flight path'],
      ['alpha/forward', 'taxi', 'Alpha to the east'],
      ['alpha/backward', 'taxi', 'Alpha to the west'],
      ['stand', 'parked', 'Parked on North'],
    ]);
  });

  test('[F310] it rolls at taxi speed on the ground of the nearest runway, one way and back', () => {
    const [forward, backward] = onTheGround(route).map((p) => p.samples);
    if (!forward || !backward) throw new Error('expected two paths');
    const last = forward.count - 1;
    expect(forward.station[last]).toBeCloseTo(410 + groundLine(to(120, 410), to(100, 700)).distance, 1);
    expect(
      Array.from(forward.station)
        .slice(0, -1)
        .every((s) => s % 20 === 0),
    ).toBe(true);
    for (const samples of [forward, backward]) {
      expect(new Set(samples.speed)).toEqual(new Set([7]));
      expect(new Set(samples.attitude)).toEqual(new Set([0]));
      // 430 m of pavement, half of 9 m of aircraft, counted from the field's 432 m.
      for (const height of samples.height) expect(height).toBeCloseTo(2.5, 6);
    }
    const place = (samples: typeof forward, i: number) =>
      positionOf([
        samples.centre[3 * i] ?? 0,
        samples.centre[3 * i + 1] ?? 0,
        samples.centre[3 * i + 2] ?? 0,
      ]);
    expect(groundLine(place(forward, 0), a).distance).toBeLessThan(0.01);
    expect(groundLine(place(backward, last), a).distance).toBeLessThan(0.01);
    expect(groundLine(place(backward, 0), to(100, 700)).distance).toBeLessThan(0.01);
  });

  test('[F311] a parked aircraft of known heading has aspect and flank', () => {
    const spot = spotFeature('s', to(90, 100), { ground: 430, eyeHeight: 4.5 });
    const figures = (heading: number | null) => {
      const found = figuresFor(contentsOf([runway, apron(heading), spot], sunside), noon, null).spots[0]
        ?.paths;
      const parked = found?.find((p) => p.ref.kind === 'parked');
      if (!parked) throw new Error('expected a parked aircraft');
      return parked;
    };
    // Seen from 200 m west of it.
    const facing = figures(270).closest;
    expect(facing.slantRange).toBeCloseTo(200, 1);
    expect(facing.aspect).toBeLessThan(0.5);
    expect(facing.flankLit).toBeNull();
    const broadside = figures(0).closest;
    expect(broadside.aspect).toBeCloseTo(90, 0);
    expect(broadside.flankLit).toBe(false);
    expect(figures(180).closest.flankLit).toBe(false);
    // Its length fits the frame: 0.8 of 36 mm for 30 m, 200 m away.
    expect(broadside.focalLength).toBeCloseTo((0.8 * 36 * 200) / 30, 0);
    // Nose-on the span counts, seen at 200 m where the wings are.
    expect(facing.focalLength).toBeCloseTo((0.8 * 36 * 200) / 26, 0);
    expect(facing).toMatchObject({ station: 0, speed: 0 });
    // It stands for itself.
    expect(figures(0)).toMatchObject({ visibleShare: 1 });
    expect(figures(0).sector.runs.map((run) => run.bearings.length)).toEqual([1]);
  });

  test('[F312] without a heading aspect and flank are null and the longer of length and span is fitted', () => {
    for (const bearing of [0, 77, 200]) {
      const spot = spotFeature('s', destination(to(90, 300), bearing, 200), { ground: 430, eyeHeight: 4.5 });
      for (const size of [{}, { span: 41 }]) {
        const contents = contentsOf([runway, apron(null), spot], {
          ...sunside,
          subjects: [{ ...plainSubject, ...size }],
        });
        const parked = figuresFor(contents, noon, null).spots[0]?.paths.at(-1)?.closest;
        expect(parked).toMatchObject({ aspect: null, flankLit: null });
        const longer = 'span' in size ? 41 : 30;
        expect(parked?.focalLength).toBeCloseTo((0.8 * 36 * 200) / longer, 0);
        expect(parked?.score.aspect).toBe(1);
      }
    }
  });

  test('[F313] the middle of an area lies in it, of an L as well', () => {
    const middle = middleOf(square(a, 50));
    expect(middle && groundLine(middle, a).distance).toBeLessThan(0.1);
    // An L: 400 m to the east along 20 m, then 400 m to the north along 20 m.
    const at = (east: number, north: number): Position => destination(destination(a, 90, east), 0, north);
    const ell = [at(0, 0), at(400, 0), at(400, 400), at(380, 400), at(380, 20), at(0, 20), at(0, 0)];
    const inside = middleOf(ell);
    if (!inside) throw new Error('expected a middle');
    const { distance, azimuth } = groundLine(a, inside);
    const [east, north] = [
      distance * Math.sin(((azimuth ?? 0) * Math.PI) / 180),
      distance * Math.cos(((azimuth ?? 0) * Math.PI) / 180),
    ];
    expect(east).toBeCloseTo(390, 0);
    expect(north).toBeGreaterThan(20);
    expect(middleOf([a, to(10, 50), a])).toBeNull();
    expect(middleOf([])).toBeNull();
  });

  test('[F314] a taxi route across half a country is none', () => {
    expect(onTheGround(feature('far', 'taxi-route', 'LineString', [a, to(30, 60_000)]))).toEqual([]);
  });
});
