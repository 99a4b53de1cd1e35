import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addFeature } from '../../src/survey/edits/add-feature';
import { saveSurvey, surveyExtension, surveyMediaType } from '../../src/survey/save';
import { feature, opened, runwayFeature, spotFeature, surveyText } from '../support/contents';
import { surveyValue } from '../support/random-survey';

const geometryTypes = ['Point', 'MultiPoint', 'LineString', 'MultiLineString', 'Polygon', 'MultiPolygon'];
type Ring = readonly (readonly number[])[];

/** Twice the area, counter-clockwise positive, for rings that stay on one side of the antimeridian. */
const area = (ring: Ring) =>
  ring.slice(1).reduce((sum, [x1 = NaN, y1 = NaN], i) => {
    const [x0 = NaN, y0 = NaN] = ring[i] ?? [];
    return sum + (x0 * y1 - x1 * y0);
  }, 0);

function checkPosition(position: unknown, numbers: number): void {
  const list = position as readonly number[];
  expect(list.length).toBeLessThanOrEqual(numbers);
  expect(list.length).toBeGreaterThanOrEqual(2);
  expect(list.every((n) => typeof n === 'number')).toBe(true);
  expect(Math.abs(list[0] ?? NaN)).toBeLessThanOrEqual(180);
  expect(Math.abs(list[1] ?? NaN)).toBeLessThanOrEqual(90);
}

/** The rules of RFC 7946 for writers that a saved survey can break (sections 3, 4, 5, 7.1). */
function checkRules(text: string): void {
  const value = JSON.parse(text) as Record<string, unknown>;
  expect(value['type']).toBe('FeatureCollection');
  for (const member of ['coordinates', 'geometries', 'geometry', 'properties', 'crs', 'bbox'])
    expect(Object.hasOwn(value, member), member).toBe(false);
  expect(Array.isArray(value['features'])).toBe(true);
  for (const entry of value['features'] as Record<string, unknown>[]) {
    expect(entry['type']).toBe('Feature');
    for (const member of ['coordinates', 'geometries', 'features'])
      expect(Object.hasOwn(entry, member), member).toBe(false);
    expect(typeof entry['id']).toBe('string');
    for (const member of ['properties', 'geometry'] as const) {
      expect(Object.hasOwn(entry, member)).toBe(true);
      expect(typeof entry[member] === 'object' && !Array.isArray(entry[member])).toBe(true);
    }
    if (entry['geometry'] !== null) checkGeometry(entry['geometry'] as Record<string, unknown>);
  }
}

function checkGeometry(geometry: Record<string, unknown>): void {
  expect(geometryTypes).toContain(geometry['type']);
  for (const member of ['geometry', 'properties', 'features', 'bbox'])
    expect(Object.hasOwn(geometry, member), member).toBe(false);
  const coordinates = geometry['coordinates'];
  switch (geometry['type']) {
    case 'Point':
      checkPosition(coordinates, 2);
      break;
    case 'LineString':
      expect((coordinates as Ring).length).toBeGreaterThanOrEqual(2);
      for (const position of coordinates as Ring) checkPosition(position, 2);
      break;
    case 'Polygon':
      for (const [i, ring] of (coordinates as readonly Ring[]).entries()) {
        expect(ring.length).toBeGreaterThanOrEqual(4);
        expect(ring.at(-1)).toEqual(ring[0]);
        for (const position of ring) checkPosition(position, 2);
        expect(area(ring) > 0, 'counter-clockwise outside, clockwise inside').toBe(i === 0);
      }
      break;
    default:
      for (const position of coordinates as Ring) checkPosition(position, 3);
  }
}

const outer = [
  [8.1, 47.1],
  [8.1, 47.3],
  [8.4, 47.3],
  [8.4, 47.1],
  [8.1, 47.1],
];
const hole = [
  [8.2, 47.15],
  [8.3, 47.15],
  [8.3, 47.2],
  [8.2, 47.15],
];
/** Every kind, much of it wound and closed as it should not be. */
const everyKind = surveyText(
  [
    runwayFeature(
      'rwy',
      [8.5, 47.4],
      [8.53, 47.38],
      [{ designator: '14', elevation: 432 }, { designator: '32' }],
    ),
    spotFeature('spot', [8.51, 47.41], { eyeHeight: 1.7, notes: 'Ümläut, "quotes" and\nlines' }),
    feature(
      'wall',
      'obstacle',
      'LineString',
      [
        [8.52, 47.4],
        [8.53, 47.41],
      ],
      { height: 3 },
    ),
    feature('hall', 'obstacle', 'Polygon', [outer, hole], { height: 20 }),
    feature('no', 'no-go', 'Polygon', [outer.slice(0, -1)]),
    feature('apron', 'apron', 'Polygon', [outer]),
    feature('taxi', 'taxi-route', 'LineString', [
      [8.5, 47.4, 431],
      [8.51, 47.4, 431],
      [8.51, 47.39, 430],
    ]),
    feature(
      'path',
      'flight-path',
      'LineString',
      [
        [179.9, 47.4],
        [-179.9, 47.4],
      ],
      { heights: [500, 700] },
    ),
    feature('log', 'log-entry', 'Point', [8.5, 47.4, 433.2]),
    { type: 'Feature', id: 'bare', properties: { kind: 'note' }, geometry: null },
  ],
  { site: { name: 'Somewhere', elevation: 431 } },
).replace('{"type"', '{"bbox":[0,0,1,1],"type"');

describe('saved surveys and RFC 7946', () => {
  test('[S30] every kind meets the rules for writers', () => {
    checkRules(saveSurvey(opened(everyKind)));
  });

  test('[S31] so does whatever else was opened', () => {
    fc.assert(
      fc.property(surveyValue, (value) => {
        // Members that 7.1 forbids are another program's fault where it wrote them.
        checkRules(saveSurvey(opened(JSON.stringify(value))));
      }),
      { seed: 3106, numRuns: 200 },
    );
  });

  test('[S32] so does what an edit draws: 7 decimals, longitudes within 180, rings wound', () => {
    const clockwise = [
      [
        [190.123456789, 5],
        [190.123456789, 6],
        [191, 6],
        [190.123456789, 5],
      ],
    ] as const;
    const drawn = addFeature(
      opened(surveyText([])),
      'a',
      'no-go',
      { type: 'Polygon', coordinates: clockwise },
      {},
    );
    checkRules(saveSurvey(drawn));
    expect(drawn.features[0]?.geometry).toEqual({
      type: 'Polygon',
      coordinates: [
        [
          [-169.8765432, 5],
          [-169, 6],
          [-169.8765432, 6],
          [-169.8765432, 5],
        ],
      ],
    });
  });

  test('[S33] media type and extension', () => {
    expect([surveyMediaType, surveyExtension]).toEqual(['application/geo+json', '.geojson']);
  });

  const gdal = spawnSync('ogrinfo', ['--version'], { encoding: 'utf8' });
  if (gdal.error) process.stdout.write('skipped: ogrinfo (Debian package gdal-bin) is not installed\n');
  test.skipIf(gdal.error)('[S34] GDAL opens it: every feature, its geometry and its properties', () => {
    const folder = mkdtempSync(join(tmpdir(), 'sunside-'));
    try {
      const file = join(folder, `survey${surveyExtension}`);
      writeFileSync(file, saveSurvey(opened(everyKind)));
      const summary = execFileSync('ogrinfo', ['-ro', '-al', file], { encoding: 'utf8', stdio: 'pipe' });
      expect(summary).toContain("using driver `GeoJSON' successful");
      expect(summary).toContain('Feature Count: 10');
      expect(summary).toContain('eyeHeight (Real) = 1.7');
      expect(summary).toContain('LINESTRING (8.5 47.4,8.53 47.38)');
      expect(summary).toMatch(/POLYGON \(\(8\.1 47\.1,8\.4 47\.1,8\.4 47\.3,8\.1 47\.3,8\.1 47\.1\),\(/);
      expect(summary).toMatch(/GEOGCRS\["WGS 84"/);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
