import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readContents } from '../../src/survey/contents';
import { signedArea } from '../../src/survey/geometry';
import { openSurvey } from '../../src/survey/open';
import { saveSurvey } from '../../src/survey/save';
import type { Position } from '../../src/survey/document';

const read = (path: string) => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');

function opened(text: string) {
  const result = openSurvey(text);
  if (!result.ok) throw new Error(`expected a survey, got "${result.reason}"`);
  return { ...result, contents: readContents(result.survey) };
}

// The second file is the sample as it was saved when version 1 was released. It is never written again: it has to
// open for ever, whatever becomes of the sample.
describe.each(['sample-sites/tolverby.geojson', 'tests/files/sample-site/version-1.geojson'])(
  '%s',
  (path) => {
    const text = read(path);

    test('opens without a doubt and is saved as the same bytes', () => {
      const { problems, contents, newer, survey } = opened(text);
      expect([...problems, ...contents.problems]).toEqual([]);
      expect(newer).toBe(false);
      expect(saveSurvey(survey)).toBe(text);
    });

    test('holds two crossing runways, five spots, routes, aprons and areas', () => {
      const { contents } = opened(text);
      expect(contents.runways.map((r) => r.ends.map((e) => e.designator))).toEqual([
        ['07', '25'],
        ['14', '32'],
      ]);
      expect(contents.runways.map((r) => r.ends.map((e) => e.displaced))).toEqual([
        [0, 240],
        [0, 0],
      ]);
      expect(contents.spots.map((s) => s.access.status).sort()).toEqual([
        'ask',
        'permitted',
        'public',
        'public',
        'public',
      ]);
      expect(contents.spots.every((s) => s.notes.length > 40 && s.access.checkedOn !== null)).toBe(true);
      expect(contents.taxiRoutes).toHaveLength(10);
      expect(contents.aprons.map((a) => a.heading)).toEqual([163.1, 343.1]);
      expect(contents.noGoAreas).toHaveLength(3);
      const fixed = contents.obstacles.filter(({ standOn }) => !standOn);
      expect(fixed.map((o) => o.sight)).toEqual(['solid', 'solid', 'leaf', 'mesh']);
    });

    test('says where it is, when, and which ends each wind uses; kit and subjects are the starters', () => {
      const { contents, survey } = opened(text);
      expect(contents.site).toMatchObject({ name: 'Tolverby', icao: null, timeZone: 'Europe/Warsaw' });
      expect(contents.site.frequencies.map((f) => f.mhz)).toEqual([119.355, 121.705, 126.23]);
      expect(contents.moments).toMatchObject({ date: '2026-06-21', a: '08:00', b: '19:00' });
      expect(contents.configurations.map((c) => [c.name, c.arrivals, c.departures])).toEqual([
        ['West wind', [{ runway: 'r8k2v4', end: 1 }], [{ runway: 'r8k2v4', end: 1 }]],
        ['East wind', [{ runway: 'r8k2v4', end: 0 }], [{ runway: 'r8k2v4', end: 0 }]],
      ]);
      expect(survey.sunside).not.toHaveProperty('kit');
      expect(contents.subject.key).toBe('A320');
    });
  },
);

type Lines = Position[] | Position[][] | Position[][][];
interface PlanFeature {
  properties: { class: string; name?: string };
  geometry: { type: 'LineString' | 'Polygon' | 'MultiPolygon'; coordinates: Lines };
}

const areas = ['building', 'terminal', 'settlement', 'meadow', 'wood', 'water', 'parking', 'pavement'];
const lines = ['road-major', 'road-minor', 'track', 'rail', 'stream', 'fence'];

describe('the ground plan of the sample', () => {
  const text = read('sample-sites/tolverby-plan.geojson');
  const { features } = JSON.parse(text) as { features: PlanFeature[] };
  const ofClass = (...classes: string[]) => features.filter((f) => classes.includes(f.properties.class));
  const rings = features.flatMap(({ geometry: { type, coordinates } }) =>
    type === 'Polygon'
      ? [coordinates as Position[][]]
      : type === 'MultiPolygon'
        ? (coordinates as Position[][][])
        : [],
  );
  const ways = (...classes: string[]) => ofClass(...classes).map((f) => f.geometry.coordinates as Position[]);

  test('is light enough to travel with the program', () => {
    expect(new TextEncoder().encode(text).length).toBeLessThan(700_000);
  });

  test('every class of the legend is there, as an area or as a line, and no other', () => {
    const kinds = new Set(features.map((f) => f.properties.class));
    expect([...kinds].sort()).toEqual([...areas, ...lines].sort());
    for (const { properties, geometry } of features)
      expect(geometry.type.endsWith('Polygon'), properties.class).toBe(areas.includes(properties.class));
  });

  test('rings are closed, wound as RFC 7946 asks, and without repeated corners', () => {
    expect(rings.length).toBeGreaterThan(2000);
    const fault = (ring: readonly Position[], i: number) =>
      ring.length < 4 ||
      String(ring.at(-1)) !== String(ring[0]) ||
      Math.sign(signedArea(ring)) !== (i === 0 ? 1 : -1) ||
      ring.some((p, k) => k > 0 && String(p) === String(ring[k - 1]));
    expect(rings.flatMap((polygon) => polygon.filter(fault))).toEqual([]);
  });

  test('lies within 12 by 9 km round the airfield', () => {
    const all = [...rings.flat(2), ...ways(...lines).flat()];
    const [lngs, lats] = [all.map((p) => p[0]), all.map((p) => p[1])];
    const span = (values: number[]) =>
      values.reduce((a, b) => Math.max(a, b)) - values.reduce((a, b) => Math.min(a, b));
    // One degree is 111.27 km northwards and 70.25 km eastwards there (WGS84).
    expect(span(lngs) * 70.25).toBeLessThan(12.1);
    expect(span(lngs) * 70.25).toBeGreaterThan(11.8);
    expect(span(lats) * 111.27).toBeLessThan(9.1);
    expect(span(lats) * 111.27).toBeGreaterThan(8.8);
  });

  test('a village of more than 150 buildings stands in it', () => {
    const buildings = ofClass('building').flatMap(({ geometry: { type, coordinates } }) =>
      type === 'MultiPolygon' ? (coordinates as Position[][][]) : [coordinates as Position[][]],
    );
    // The village lies between 470 and 2200 m east and 1050 and 2000 m south of the reference.
    const there = buildings.filter(([ring]) => {
      const [lng, lat] = ring?.[0] ?? [0, 0];
      return lng > 18.18 && lng < 18.205 && lat > 50.9105 && lat < 50.9193;
    });
    expect(there.length).toBeGreaterThan(150);
    const named = new Set(ofClass('settlement').map((f) => f.properties.name));
    expect(named).toContain('Tolverby');
  });

  test('no road, track or railway crosses a runway', () => {
    const { contents } = opened(read('sample-sites/tolverby.geojson'));
    const roads = ways('road-major', 'road-minor', 'track', 'rail');
    const crossings = contents.runways.flatMap(({ line: [a, b] }) =>
      roads.filter((way) => way.some((p, i) => i > 0 && crosses(a, b, way[i - 1] as Position, p))),
    );
    expect(crossings).toEqual([]);
    const [main, other] = contents.runways;
    // The test would see a crossing: the two runways do cross.
    expect(main && other && crosses(...main.line, ...other.line)).toBe(true);
  });
});

/** Whether two stretches cross; small enough here to be taken as flat. */
function crosses(a: Position, b: Position, c: Position, d: Position): boolean {
  const side = (p: Position, q: Position, r: Position) =>
    Math.sign((q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]));
  return side(a, b, c) !== side(a, b, d) && side(c, d, a) !== side(c, d, b);
}

describe('what else is flown at the sample', () => {
  test('[F1056] a display line with its crowd and programme, passes to be chosen, and a helipad', () => {
    const { contents } = opened(read('sample-sites/tolverby.geojson'));
    expect(contents.displayLines.map((d) => [d.passes, d.programme.length])).toEqual([[[], 4]]);
    expect(contents.crowdLines).toHaveLength(1);
    expect(contents.helipads.map((pad) => pad.courses)).toEqual([[253, 73]]);
  });
});
