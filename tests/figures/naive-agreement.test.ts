import Geodesic from 'geographiclib-geodesic';
import { describe, expect, test } from 'vitest';
import { figuresFor } from '../../src/figures/figures-for';
import { sunAt } from '../../src/figures/light/sun';
import type { ElevationGrid } from '../../src/figures/sight/terrain';
import { inspectPath } from '../../src/figures/spot/inspect-path';
import { outlookOf } from '../../src/figures/outlook';
import { pathsOf } from '../../src/figures/traffic/paths';
import type { Sample } from '../../src/figures/types';
import { contentsOf, feature, runwayFeature, spotFeature } from '../support/contents';
import { naiveSamples, naiveSunLine, type NaiveSample, type Scenario } from '../support/naive-sample';
import type { NaiveGround, NaiveObstacle } from '../support/naive-sight';
import { PublishedTable, seeded } from '../support/tolerance';
import { thorough } from '../support/thorough';

const wgs84 = Geodesic.Geodesic.WGS84;
const note = 'two ways of computing it';
const limits = {
  height: { limit: 0.001, unit: 'm', why: note },
  groundRange: { limit: 0.02, unit: 'm', why: 'arc over the mean radius at the eye' },
  slantRange: { limit: 0.02, unit: 'm', why: 'normal section instead of geodesic, out to 10 km' },
  bearing: { limit: 0.002, unit: 'deg', why: note },
  elevation: { limit: 0.002, unit: 'deg', why: note },
  aspect: { limit: 0.002, unit: 'deg', why: note },
  focalLength: { limit: 0.0001, unit: 'of f', why: note },
  focalLength35: { limit: 0.0001, unit: 'of f', why: note },
  lightAngle: { limit: 0.12, unit: 'deg', why: 'sun good to 0.014; level at the eye, not at the aircraft' },
  phaseAngle: { limit: 0.03, unit: 'deg', why: 'sun good to 0.014, refraction at the eye' },
  scoreLight: { limit: 0.002, unit: '', why: 'angles above' },
  scoreReach: { limit: 0.0002, unit: '', why: note },
  scoreAspect: { limit: 0.0001, unit: '', why: note },
  scoreHaze: { limit: 0.001, unit: '', why: 'sun good to 0.014' },
  scoreSight: { limit: 1e-9, unit: '', why: 'counted in thirds' },
  scoreTotal: { limit: 0.002, unit: '', why: 'product of the five' },
} as const;

type Random = () => number;
const between = (random: Random, low: number, high: number) => low + random() * (high - low);

/** Asymmetric in everything: no two numbers that could be taken for one another. */
function scenario(
  random: Random,
  [lat, lng]: readonly [number, number],
  instant: number,
  {
    azimuth,
    side,
    underneath,
    standingThere,
    hills,
  }: { azimuth: number; side: 90 | -90; underneath: boolean; standingThere: boolean; hills: boolean },
): Scenario {
  const length = between(random, 900, 3600);
  const b = wgs84.Direct(lat, lng, azimuth, length);
  const along = wgs84.Direct(lat, lng, azimuth, between(random, -3500, underneath ? -400 : length + 2500));
  const off = underneath ? between(random, 1, 12) : 60 + random() ** 2 * 1800;
  const spot = wgs84.Direct(along.lat2 ?? NaN, along.lon2 ?? NaN, azimuth + side, off);
  const elevation = between(random, 0, 900);
  const end = () => ({
    elevation: elevation + between(random, -8, 8),
    displaced: random() < 0.5 ? 0 : between(random, 50, 500),
    glide: between(random, 2.7, 5.5),
    crossingHeight: between(random, 9, 18),
  });
  const stands = { lat: spot.lat2 ?? NaN, lng: spot.lon2 ?? NaN };
  const towards = wgs84.Inverse(stands.lat, stands.lng, along.lat2 ?? NaN, along.lon2 ?? NaN).azi1 ?? NaN;
  const size = between(random, 6, 70);
  const crop = between(random, 0.4, 1);
  const shortest = between(random, 50, 120);
  return {
    ends: [
      { lat, lng, ...end() },
      { lat: b.lat2 ?? NaN, lng: b.lon2 ?? NaN, ...end() },
    ],
    spot: {
      lat: spot.lat2 ?? NaN,
      lng: spot.lon2 ?? NaN,
      ground: elevation + between(random, -20, 20),
      eyeHeight: between(random, 1.2, 15),
    },
    subject: {
      length: size,
      span: size * between(random, 0.75, 1.25),
      height: size * between(random, 0.2, 0.35),
      ...(tails[Math.floor(size * 1000) % tails.length] ?? tails[0]),
      groundRun: between(random, 200, 2500),
      landingRun: between(random, 150, 1800),
      climbGradient: between(random, 0.05, 0.25),
      approachAngle: random() < 0.2 ? between(random, 4, 9) : null,
    },
    sensor: [36 * crop, 24 * crop * between(random, 0.95, 1.1)],
    fill: between(random, 0.5, 1),
    lenses: [
      { shortest, longest: shortest * 1.7 },
      { shortest: shortest * 2.2, longest: shortest * between(random, 3, 6) },
    ],
    instant,
    obstacles: standingThere ? obstaclesAbout(random, stands, towards, elevation, off) : [],
    terrain: hills ? hillsAbout(random, stands, towards, elevation) : null,
  };
}

/** What is framed besides nose, tail, fin tip and wheels. */
const tails = [
  { propulsion: 'jet', tailSpan: null },
  { propulsion: 'rotor', tailSpan: null },
  { propulsion: 'jet', tailSpan: 30 },
] as const;

/** Blocks between the spot and the path and round about: roofs from knee to tower height, one of them a mesh. */
function obstaclesAbout(
  random: Random,
  { lat, lng }: { lat: number; lng: number },
  towards: number,
  elevation: number,
  off: number,
): NaiveObstacle[] {
  return Array.from({ length: 7 }, (_, i) => {
    const azimuth = towards + between(random, -70, 70);
    const distance = between(random, 0.15, 0.9) * Math.max(80, off);
    const at = wgs84.Direct(lat, lng, azimuth, distance);
    const turn = between(random, 0, 360);
    const [wide, deep] = [between(random, 8, 120), between(random, 3, 25)];
    const corners = [
      [-wide, -deep],
      [wide, -deep],
      [wide, deep],
      [-wide, deep],
    ].map(([x = 0, y = 0]) => {
      const corner = wgs84.Direct(
        at.lat2 ?? NaN,
        at.lon2 ?? NaN,
        turn + (Math.atan2(x, y) * 180) / Math.PI,
        // None reaches the eye itself: who stands on a roof has a rule of his own.
        Math.min(Math.hypot(x, y), 0.8 * distance) / 2,
      );
      return { lat: corner.lat2 ?? NaN, lng: corner.lon2 ?? NaN };
    });
    const base = elevation + between(random, -10, 5);
    return { id: `o${i}`, corners, base, height: between(random, 1, 50), hides: i !== 3 };
  });
}

/** Three round hills on ground below the field, and m between the samples of their model. */
function hillsAbout(
  random: Random,
  { lat, lng }: { lat: number; lng: number },
  towards: number,
  elevation: number,
): { ground: NaiveGround; step: number } {
  const hills = [0, 1, 2].map(() => {
    const at = wgs84.Direct(lat, lng, towards + between(random, -60, 60), between(random, 200, 1500));
    return {
      lat: at.lat2 ?? NaN,
      lng: at.lon2 ?? NaN,
      high: between(random, 15, 60),
      wide: between(random, 90, 300),
    };
  });
  const level = elevation - 40;
  const ground: NaiveGround = (place) =>
    hills.reduce((sum, hill) => {
      const y = (place.lat - hill.lat) * 111_200;
      const x = (((place.lng - hill.lng + 540) % 360) - 180) * 111_200 * Math.cos(hill.lat * (Math.PI / 180));
      return sum + hill.high * Math.exp(-(x * x + y * y) / (2 * hill.wide ** 2));
    }, level);
  return { ground, step: 25 };
}

/** The same ground as a file would have it: samples 25 m apart, out to 12 km. */
function gridOf({ spot, terrain }: Scenario): ElevationGrid | null {
  if (!terrain) return null;
  const stepLat = terrain.step / 111_200;
  const stepLng = stepLat / Math.cos(spot.lat * (Math.PI / 180));
  const half = 480;
  const size = 2 * half + 1;
  const [west, north] = [spot.lng - half * stepLng, spot.lat + half * stepLat];
  const heights = Float32Array.from({ length: size * size }, (_, i) =>
    terrain.ground({ lat: north - Math.floor(i / size) * stepLat, lng: west + (i % size) * stepLng }),
  );
  return { columns: size, rows: size, west, north, stepLng, stepLat, heights };
}

const contentsFor = (s: Scenario) =>
  contentsOf(
    [
      runwayFeature(
        'rwy',
        [s.ends[0].lng, s.ends[0].lat],
        [s.ends[1].lng, s.ends[1].lat],
        [
          { designator: 'A', ...s.ends[0] },
          { designator: 'B', ...s.ends[1] },
        ],
      ),
      spotFeature('spot', [s.spot.lng, s.spot.lat], { ...s.spot }),
      ...s.obstacles.map(({ id, corners, base, height, hides }) =>
        feature(id, 'obstacle', 'Polygon', [[...corners, corners[0]].map((c) => [c?.lng, c?.lat])], {
          base,
          height,
          sight: hides ? 'solid' : 'mesh',
        }),
      ),
    ],
    {
      subjects: [{ key: 's', approachSpeed: 70, climbSpeed: 80, ...s.subject }],
      kit: {
        fill: s.fill,
        bodies: [
          {
            key: 'b',
            sensorWidth: s.sensor[0],
            sensorHeight: s.sensor[1],
            pixelsWide: 6000,
            pixelsHigh: 4000,
          },
        ],
        lenses: s.lenses.map((l, i) => ({ key: `l${i}`, widestAperture: 4, ...l })),
      },
    },
  );

/** Bands of sun altitude in degrees, so that every class of light is met. */
const altitudes = [
  [2, 15],
  [15, 40],
  [-5.5, -1.2],
  [3, 12],
  [46, 58],
  [10, 30],
  [61, 80],
  [0, 20],
  [-20, -7],
] as const;

/** Places in both hemispheres, beside the antimeridian from either side, at 70 N, and instants by day and by night. */
function scenarios(count: number): Scenario[] {
  const random = seeded(4_711);
  const special: readonly (readonly [number, number])[] = [
    [-17.75, 179.995],
    [52.3, -179.996],
    [70.2, 25.1],
    [70.9, -156.4],
    [-54.8, -68.3],
    [0.02, 36.9],
  ];
  return Array.from({ length: count }, (_, i) => {
    const [lat, lng] = special[i] ?? [between(random, -58, 66), between(random, -180, 180)];
    const [low, high] = altitudes[i % altitudes.length] ?? [0, 0];
    let instant = 0;
    // Where the sun never stands as high or low as that, any hour will do.
    for (let tries = 0; tries < 3000; tries++) {
      instant = Date.UTC(2026, 0, 1) + random() * 365 * 86_400_000;
      const { geometricAltitude } = sunAt([lng, lat], instant);
      if (geometricAltitude > low && geometricAltitude < high) break;
    }
    // One in three looks across the runway towards the sun.
    const towardsSun = sunAt([lng, lat], instant).azimuth + 90 + between(random, -25, 25);
    const [azimuth, side] = i % 3 === 0 ? ([towardsSun, 90] as const) : ([random() * 360, -90] as const);
    return scenario(random, [lat, lng], instant, {
      azimuth,
      side,
      underneath: i % 6 === 5,
      standingThere: i % 2 === 0,
      hills: i % 5 === 1,
    });
  });
}

const paths = [
  { end: 0, kind: 'arrival', path: 'rwy/A/arrival' },
  { end: 0, kind: 'departure', path: 'rwy/A/departure' },
  { end: 1, kind: 'arrival', path: 'rwy/B/arrival' },
  { end: 1, kind: 'departure', path: 'rwy/B/departure' },
] as const;

function compare(table: PublishedTable<keyof typeof limits>, got: Sample, naive: NaiveSample): void {
  table.near('height', got.height, naive.height);
  table.near('groundRange', got.groundRange, naive.groundRange);
  table.near('slantRange', got.slantRange, naive.slantRange);
  // A centimetre at 60 m is a hundredth of a degree: angles count from 300 m on in full.
  const far = Math.min(1, naive.slantRange / 300);
  const out = Math.min(1, naive.groundRange / 300);
  table.nearAngle('bearing', got.bearing ?? NaN, naive.bearing, out);
  table.near('elevation', got.elevation ?? NaN, naive.elevation, far);
  table.near('aspect', got.aspect ?? NaN, naive.aspect, far);
  table.near('focalLength', (got.focalLength ?? NaN) / naive.focalLength, 1, far);
  table.near('focalLength35', (got.focalLength35 ?? NaN) / naive.focalLength35, 1, far);
  table.near('phaseAngle', got.phaseAngle ?? NaN, naive.phaseAngle, far);
  // Level at the eye is not level at the aircraft, 0.09 degrees 10 km away: the higher the sun, the more it shows.
  table.near('lightAngle', got.lightAngle ?? NaN, naive.lightAngle, out * naive.cosSunAltitude);
  table.near('scoreReach', got.score.reach, naive.score.reach, far);
  table.near('scoreAspect', got.score.aspect, naive.score.aspect, far);
  table.near('scoreHaze', got.score.haze, naive.score.haze);
  const sight = naive.sight();
  if (sight.doubtful) return;
  table.near('scoreSight', got.score.sight, sight.share);
  if (naive.onEdge) return;
  table.near('scoreLight', got.score.light, naive.score.light, naive.cosSunAltitude);
  table.near('scoreTotal', got.score.total, naive.score.total * sight.share, naive.cosSunAltitude);
  expect(got.flankLit).toBe(naive.flankLit);
}

describe('figures against a naive re-computation from the design', () => {
  test('[F1] every member of a sample, closest, best and the share of glare', () => {
    const table = new PublishedTable('naive re-computation', limits);
    const random = seeded(99);
    const all = scenarios(26);
    let samples = 0;
    let onEdge = 0;
    let overhead = 0;
    let doubtful = 0;
    let passes = 0;
    let lookedFor = 0;
    let blockedThere = 0;
    const sights = new Map<number, number>();
    const classes = new Map<string, number>();
    const glares = { none: 0, some: 0, usable: 0 };
    let looked = 0;
    for (const [i, s] of all.entries()) {
      const contents = contentsFor(s);
      expect(contents.problems).toEqual([]);
      const grid = gridOf(s);
      const outlook = outlookOf(contents, grid);
      const sunLine = naiveSunLine(s);
      const spot = contents.spots[0];
      const figures = figuresFor(contents, s.instant, grid).spots[0];
      if (!spot || !figures) throw new Error('expected a spot');
      const ready = pathsOf(contents, (kind) => kind !== 'circuit', null);
      // A naive path is dear: in `npm test` two places have those at one end of the runway compared, the next two at the other.
      for (const { end, kind, path } of paths) {
        if (!thorough && end === (i >> 1) % 2) continue;
        looked++;
        const naive = naiveSamples(s, end, kind);
        const byStation = new Map(naive.map((n) => [n.station.toFixed(3), n]));
        const seen = figures.paths.find((p) => p.ref.path === path);
        const flown = ready.find((p) => p.ref.path === path);
        if (!seen || !flown) throw new Error(`expected ${path}`);
        expect(flown.samples.count).toBe(naive.length);
        const at = (station: number) => {
          const found = byStation.get(station.toFixed(3));
          if (!found) throw new Error(`${path}: the naive path has no sample at ${station}`);
          return found;
        };
        const look = (what: string, got: Sample) => {
          samples++;
          table.row(`${what} of ${path} at ${s.ends[0].lat.toFixed(2)}, ${s.ends[0].lng.toFixed(2)}`);
          const other = at(got.station);
          compare(table, got, other);
          if (other.elevation > 75) overhead++;
          if (other.onEdge) onEdge++;
          else {
            // Thresholds of light angles and of glare count only where the two ways do not straddle them.
            const lit = other.elevation > 30 ? other.phaseAngle : other.lightAngle;
            const straddling = 0.15 / (other.cosSunAltitude * Math.min(1, other.groundRange / 300));
            if (Math.abs(lit - 60) > straddling && Math.abs(lit - 110) > straddling)
              expect(got.light).toBe(other.light);
          }
          const sight = other.sight();
          if (sight.doubtful) doubtful++;
          else sights.set(sight.share, (sights.get(sight.share) ?? 0) + 1);
          if (Math.abs(other.glaring) > 0.05) {
            expect(got.sunNear).toBe(other.glaring > 0);
            if (!sight.doubtful && !sunLine.doubtful)
              expect(got.glare).toBe(other.glaring > 0 && !sunLine.hidden && sight.share > 0);
          }
          classes.set(got.light, (classes.get(got.light) ?? 0) + 1);
          return other;
        };

        const closest = look('closest', seen.closest);
        expect(closest.slantRange - Math.min(...naive.map((n) => n.slantRange))).toBeLessThan(0.01);
        const best = look('best', seen.best);
        const inBest = best.sight();
        if (!best.onEdge && !inBest.doubtful) {
          const total = best.score.total * inBest.share;
          for (const n of naive) {
            // Only what could be better has to be looked at.
            if (n.onEdge || n.score.total < total + 0.002) continue;
            const sight = n.sight();
            expect(sight.doubtful || n.score.total * sight.share < total + 0.002, `${n.station}`).toBe(true);
          }
        }
        // The pass: none better among what is usable, in sight and of aspect 30 to 120.
        if (seen.pass) {
          passes++;
          const pass = look('pass', seen.pass);
          const total = pass.score.total * pass.sight().share;
          expect(pass.usable && pass.aspect > 29.99 && pass.aspect < 120.01).toBe(true);
          for (const n of pass.onEdge || pass.sight().doubtful ? [] : naive) {
            if (!n.usable || n.aspect < 30.01 || n.aspect > 119.99) continue;
            if (n.onEdge || n.score.total < total + 0.002) continue;
            const sight = n.sight();
            expect(sight.doubtful || n.score.total * sight.share < total + 0.002, `${n.station}`).toBe(true);
          }
        } else {
          const could = naive.filter((n) => n.usable && n.aspect > 30.01 && n.aspect < 119.99);
          expect(could.every((n) => n.sight().doubtful || n.sight().share === 0)).toBe(true);
        }
        if (s.obstacles.length === 0 && !s.terrain && best.score.total === 0)
          expect(seen.best.station).toBe(seen.closest.station);

        const usable = naive.filter((n) => n.usable);
        const length = usable.reduce((sum, n) => sum + n.share, 0);
        const sighted = usable.map((n) => ({ ...n, ...n.sight(), length: n.share }));
        const surely = (n: (typeof sighted)[number]) => !n.doubtful && n.share > 0;
        const perhaps = (n: (typeof sighted)[number]) => n.doubtful || n.share > 0;
        const glaring = (margin: number, seenAt: typeof surely, sun: boolean) =>
          sun
            ? sighted.filter((n) => n.glaring > margin && seenAt(n)).reduce((sum, n) => sum + n.length, 0)
            : 0;
        if (length === 0) {
          expect([seen.glareShare, seen.visibleShare]).toEqual([null, null]);
        } else {
          glares.usable++;
          const visible = (unknown: number) =>
            sighted.reduce((sum, n) => sum + n.length * (n.doubtful ? unknown : n.share), 0) / length;
          expect(seen.visibleShare).toBeGreaterThanOrEqual(visible(0) - 1e-9);
          expect(seen.visibleShare).toBeLessThanOrEqual(visible(1) + 1e-9);
          const [sure, possible] = [
            !sunLine.hidden && !sunLine.doubtful,
            !sunLine.hidden || sunLine.doubtful,
          ];
          expect(seen.glareShare).toBeGreaterThanOrEqual(glaring(0.05, surely, sure) / length - 1e-9);
          expect(seen.glareShare).toBeLessThanOrEqual(glaring(-0.05, perhaps, possible) / length + 1e-9);
          if (seen.glareShare === 0) glares.none++;
          else glares.some++;
        }
        const ridden = seen.sector.runs.flatMap((r) => r.bearings);
        const blocked = naive.map((n, i) => ({
          n,
          sight: i % (thorough ? 7 : 21) === 0 || n.usable ? n.sight() : null,
        }));
        for (const { n, sight } of blocked) {
          if (!sight || sight.doubtful) continue;
          lookedFor++;
          if (sight.share === 0) blockedThere++;
          const inStretch = seen.hidden.some(
            // The station of ground contact is found in two ways: equal to a hair.
            ({ from, to }) =>
              n.station <= Math.max(from, to) + 1e-6 && n.station >= Math.min(from, to) - 1e-6,
          );
          expect(inStretch, `${path} at ${n.station}`).toBe(sight.share === 0);
        }
        const unsure = blocked.filter(({ n, sight }) => n.usable && sight?.doubtful).length;
        const inView = blocked.filter(
          ({ n, sight }) => n.usable && sight && !sight.doubtful && sight.share > 0,
        );
        expect(ridden.length).toBeGreaterThanOrEqual(inView.length);
        expect(ridden.length).toBeLessThanOrEqual(inView.length + unsure);

        for (let i = 0; i < 6; i++) {
          const station = naive[Math.floor(random() * naive.length)]?.station ?? NaN;
          look('a sample', inspectPath(spot, flown, station, outlook, s.instant));
        }
      }
    }
    process.stdout.write(
      `naive re-computation: ${samples} samples compared, ${onEdge} on an edge, ${overhead} overhead; ${[...classes].map(([c, n]) => `${c} ${n}`).join(', ')}; glare on ${glares.some} of ${glares.usable} paths with usable samples; in sight ${[...sights].map(([c, n]) => `${Math.round(3 * c)}/3 ${n}`).join(', ')}, ${doubtful} in doubt; ${blockedThere} of ${lookedFor} more hidden\n`,
    );
    table.close(looked * 8 + passes);
    expect([...sights.keys()].sort()).toEqual([0, 1 / 3, 2 / 3, 1]);
    expect(blockedThere).toBeGreaterThan(200);
    expect(doubtful / samples).toBeLessThan(0.05);
    expect(overhead).toBeGreaterThan(5);
    expect(onEdge / samples).toBeLessThan(0.03);
    // The scenarios must reach every class and glare, or the comparison says nothing about it.
    expect([...classes.keys()].sort()).toEqual([
      'back-lit',
      'civil-twilight',
      'dark',
      'front-lit',
      'side-lit',
      'top-lit',
    ]);
    expect(Math.min(glares.some, glares.none)).toBeGreaterThan(thorough ? 10 : 5);
    expect(passes).toBeGreaterThan(thorough ? 20 : 10);
  });
});
