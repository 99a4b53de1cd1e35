import { describe, expect, test } from 'vitest';
import { groundLine } from '../../../src/figures/geometry/earth';
import { inspectPath } from '../../../src/figures/spot/inspect-path';
import { outlookOf } from '../../../src/figures/outlook';
import type { Path } from '../../../src/figures/traffic/paths';
import type { OverlayFeature } from '../../../src/map/overlays/features';
import { inspectedMark } from '../../../src/map/overlays/marks';
import { courseAt, nearestSample, pathLine, sampleAtStation } from '../../../src/map/overlays/path-line';
import { pathsOverlay } from '../../../src/map/overlays/paths';
import { metric } from '../../../src/map/units';
import { stationText, tickSpacing, ticksOf } from '../../../src/map/overlays/ticks';
import type { SpotScene } from '../../../src/map/overlays/scene';
import { metres } from '../../../src/units/format';
import type { Position } from '../../../src/survey/document';
import { focalColour } from '../../../styles/ramps';
import { field } from '../field';
import { instants, sceneOf } from '../scene';

const scene = sceneOf(field, 'bank');
const [bank] = scene.spots as [SpotScene];
const [arrival, departure] = scene.paths as [Path, Path];
const circuit = sceneOf(field, 'bank', (kind, _runway, end) => kind === 'circuit' && end === 0)
  .paths[0] as Path;

const overlayOf = (paths: readonly Path[], focal: readonly Float64Array[] | null) =>
  pathsOverlay(scene.contents.runways, scene.contents.subject, 120, paths, focal, scene.usableTo).features;
const of = (features: readonly OverlayFeature[], part: string) =>
  features.filter((f) => f.properties['part'] === part);
const line = (f: OverlayFeature | undefined) => f?.geometry.coordinates as readonly Position[];

describe('the track of a path', () => {
  test.each([
    ['arrival', arrival],
    ['circuit', circuit],
  ] as const)('%s: what is left out lies within 1 m of the line that is drawn', (_name, path) => {
    const { positions, kept } = pathLine(path);
    expect(kept.length).toBeLessThan(positions.length / 2);
    kept.slice(1).forEach((to, k) => {
      const from = kept[k] as number;
      const [a, b] = [positions[from] as Position, positions[to] as Position];
      for (let i = from + 1; i < to; i++) {
        const whole = groundLine(a, b);
        const part = groundLine(a, positions[i] as Position);
        const off = part.distance * Math.sin((((part.azimuth ?? 0) - (whole.azimuth ?? 0)) * Math.PI) / 180);
        expect(Math.abs(off)).toBeLessThan(1);
      }
    });
  });

  test('a position beside it picks the nearest sample', () => {
    const i = sampleAtStation(arrival, 3000);
    const [lng, lat] = pathLine(arrival).positions[i] as Position;
    expect(arrival.samples.station[i]).toBe(3000);
    expect(nearestSample(arrival, [lng + 0.0001, lat + 0.002])).toBeCloseTo(i, -1);
    expect(courseAt(arrival, i)).toBeCloseTo(109.4, 0);
  });
});

describe('a station on a path', () => {
  test.each([
    ['arrival', arrival],
    ['departure', departure],
  ] as const)(
    '%s: every sample is found by its station, and what lies between by the nearer one',
    (_name, path) => {
      const { station, count } = path.samples;
      for (let i = 0; i < count; i++) expect(sampleAtStation(path, station[i] as number)).toBe(i);
      const [a, b] = [station[40] as number, station[41] as number];
      expect(sampleAtStation(path, a + (b - a) * 0.4)).toBe(40);
      expect(sampleAtStation(path, a + (b - a) * 0.6)).toBe(41);
      expect(sampleAtStation(path, 1e6)).toBe(path === arrival ? 0 : count - 1);
    },
  );
});

describe('the colour of a path', () => {
  const coloured = overlayOf([arrival], [Float64Array.from(scene.focalLengths?.[0] ?? [])]);

  test('is that of the focal length needed at its samples', () => {
    const focal = scene.focalLengths?.[0] as Float64Array;
    const { positions } = pathLine(arrival);
    const where = new Map(positions.map((p, i) => [p, i]));
    const lines = of(coloured, 'path');
    expect(new Set(lines.map((f) => f.properties['colour'])).size).toBeGreaterThan(2);
    for (const f of lines) {
      const at = where.get(line(f)[0] as Position) as number;
      expect(f.properties['colour']).toBe(focalColour(focal[at] as number, scene.usableTo));
    }
  });

  test('leaves no gap: each stretch begins where the last one ended', () => {
    const lines = of(coloured, 'path').map(line);
    const { positions } = pathLine(arrival);
    expect(lines[0]?.[0]).toBe(positions[0]);
    expect(lines.at(-1)?.at(-1)).toBe(positions.at(-1));
    lines.slice(1).forEach((l, i) => expect(l[0]).toBe(lines[i]?.at(-1)));
  });

  test('without a selected spot there is plain ink only', () => {
    const plain = overlayOf([arrival, departure], null);
    expect(of(plain, 'path')).toEqual([]);
    expect(of(plain, 'way').map((f) => [f.properties['name'], f.properties['plain']])).toEqual([
      ['10 arrival', true],
      ['10 departure', true],
    ]);
  });
});

describe('the touchdown band', () => {
  test('lies from ground contact of the glide line to 300 m beyond, across the runway', () => {
    const [band] = of(overlayOf([arrival, departure], null), 'touchdown');
    const ring = (band?.geometry.coordinates as readonly (readonly Position[])[])[0] ?? [];
    // By hand: 180 m displaced, crossing at 15.24 m, 3 degrees, the runway rising 6 m over 2,350 m: 15.24 / (0.05241 + 0.00255) = 277 m.
    const [start, end] = scene.contents.runways[0]?.line ?? [];
    const along = (p: Position | undefined) => {
      const { distance, azimuth } = groundLine(start as Position, p as Position);
      const course = groundLine(start as Position, end as Position).azimuth ?? 0;
      return distance * Math.cos((((azimuth ?? 0) - course) * Math.PI) / 180);
    };
    expect(along(ring[0])).toBeCloseTo(180 + 277, -1);
    expect(along(ring[1])).toBeCloseTo(180 + 277 + 300, -1);
  });

  test('is for jets only', () => {
    const subject = { ...scene.contents.subject, propulsion: 'propeller' as const };
    const drawn = pathsOverlay(scene.contents.runways, subject, 120, [arrival], null, 600).features;
    expect(of(drawn, 'touchdown')).toEqual([]);
  });
});

describe('ticks', () => {
  test('stand as far apart as there is room for labels', () => {
    expect([10, 12, 14, 16].map((zoom) => tickSpacing(50, zoom))).toEqual([null, 2000, 500, 100]);
  });

  test('carry the slant range and height that the figures have', () => {
    const tick = ticksOf([arrival], bank, 14).find((f) => f.properties['station'] === '1.5 km out');
    const sample = inspectPath(bank.spot, arrival, 1500, outlookOf(scene.contents, null), instants[0]);
    expect(tick?.properties['detail']).toBe(
      `height ${metres(sample.height)}\nslant ${metres(sample.slantRange)}`,
    );
  });

  test('print feet where these are preferred', () => {
    const tick = ticksOf([arrival], bank, 14, { ...metric, lengths: 'ft' }).find(
      (f) => f.properties['station'] === '4,921 ft out',
    );
    expect(tick?.properties['detail']).toMatch(/^height [\d,]+ ft\nslant [\d,]+ ft$/);
  });

  test('are read as distances: m below a kilometre, km from there on', () => {
    expect([stationText(500, 500), stationText(1500, 500), stationText(4000, 1000)]).toEqual([
      '500 m',
      '1.5 km',
      '4 km',
    ]);
  });
});

describe('the inspected point', () => {
  const said = (path: Path, station: number) =>
    inspectedMark([path], { path: path.ref.path, station })[0]?.properties['label'];
  test('stands where the panels say, in their words', () => {
    expect(said(arrival, 1500)).toMatch(/\n1,500 m before the threshold\nheight [\d,]+ m$/);
    expect(said(arrival, -500)).toMatch(/\n500 m beyond the threshold\nheight /);
    expect(said(departure, 1000)).toMatch(/\n1,000 m from the start\nheight /);
  });
});
