import { describe, expect, test } from 'vitest';
import { handlesOf } from '../../../src/map/overlays/handles';
import { drawingOf, draggedRunway } from '../../../src/map/overlays/drawing';
import { readContents } from '../../../src/survey/contents';
import type { SurveyFeature } from '../../../src/survey/document';
import { field, instant } from '../field';

const feature = (id: string) => field.features.find((f) => f.id === id) as SurveyFeature;
const of = (id: string, part: string) =>
  handlesOf(feature(id), { ring: 0, index: 1 }).filter((f) => f.properties['part'] === part);
const contents = readContents(field);

describe('handles of the selected feature', () => {
  test('a line of three has three corners and two midpoints; the chosen one is marked', () => {
    expect(of('fence', 'vertex').map((f) => f.properties['chosen'])).toEqual([false, true, false]);
    expect(of('fence', 'midpoint').map((f) => [f.properties['index'], f.geometry.coordinates])).toEqual([
      [1, [6.995, 49.9975]],
      [2, [7.005, 49.9955]],
    ]);
  });

  test('an area has each corner once and a midpoint on its last side too', () => {
    expect(of('marsh', 'vertex')).toHaveLength(3);
    const last = of('marsh', 'midpoint').at(-1);
    expect(last?.properties['index']).toBe(3);
    expect(last?.geometry.coordinates[0]).toBeCloseTo(6.9835, 9);
  });

  test('a runway keeps its two ends: no midpoint', () => {
    expect(of('rw', 'vertex')).toHaveLength(2);
    expect(of('rw', 'midpoint')).toEqual([]);
  });

  test('a spot has none, and nothing selected has none', () => {
    expect(handlesOf(feature('bank'), null)).toEqual([]);
    expect(handlesOf(null, null)).toEqual([]);
  });
});

describe('figures at the pointer', () => {
  const label = (features: ReturnType<typeof drawingOf>) =>
    features.find((f) => f.properties['part'] === 'drawn-pointer')?.properties['label'];
  const legs = [
    [6.985, 50.004],
    [7.016, 49.997],
  ] as const;

  test('a runway that is drawn shows length, both bearings and designators', () => {
    // GeographicLib (Karney 2013), computed with its npm package: 2355.0 m, azimuth 109.29; WMM2025 by geomagnetism: 3.29 east.
    const text = label(drawingOf(legs, true, contents.runways, contents.site, instant));
    expect(text).toMatch(/^2,355 m\n109° true, 106° magnetic\nrunway 11\/29$/);
  });

  test('any other line shows the length and bearing of its last leg', () => {
    const text = label(drawingOf([[6.9, 50.1], ...legs], false, contents.runways, contents.site, instant));
    expect(text).toMatch(/^2,355 m\n109° true$/);
  });

  test('in feet and plain bearings where these are preferred', () => {
    const units = { lengths: 'ft', bearings: 'plain' } as const;
    const east = [
      [7, 50],
      [7.01, 50.001],
    ] as const;
    const text = label(drawingOf(east, false, contents.runways, contents.site, instant, units));
    expect(text).toMatch(/^2,38\d ft\n81° true$/);
  });

  test('so does a runway whose end is dragged, at that end', () => {
    const [drawn] = draggedRunway(feature('rw'), { ring: 0, index: 1 }, contents, instant);
    expect(drawn?.geometry.coordinates).toEqual([7.016, 49.997]);
    expect(drawn?.properties['label']).toMatch(/^2,355 m/);
    expect(draggedRunway(feature('fence'), { ring: 0, index: 1 }, contents, instant)).toEqual([]);
  });

  test('with nothing drawn there is nothing', () => {
    expect(drawingOf([], true, contents.runways, contents.site, instant)).toEqual([]);
  });
});
