import { describe, expect, it } from 'vitest';
import { designatorsIn, namedEnds } from '../../../src/imports/bring-in/runway-ends';
import { sniff } from '../../../src/imports/bring-in/sniff';
import { destination } from '../../../src/figures/geometry/earth';
import { newSurvey } from '../../../src/survey/new-survey';
import { saveSurvey } from '../../../src/survey/save';
import { osmGeoJson, osmXml, overpassGeom, overpassNodes } from '../fixtures/extract';
import { csv, csvCommas, geojson, gpx, kmlTrack } from '../fixtures/tracks';

const is = (name: string, text: string) => sniff(name, text.slice(0, 65_536), text.slice(-65_536));

describe('what a file is', () => {
  it('[I60] is told by what it holds, whatever it is called', () => {
    expect(is('x', saveSurvey(newSurvey({})))).toBe('survey');
    expect(is('x.json', JSON.stringify(overpassGeom()))).toBe('overpass');
    expect(is('x.txt', JSON.stringify(overpassNodes()))).toBe('overpass');
    expect(is('x.geojson', JSON.stringify(osmGeoJson()))).toBe('geojson');
    expect(is('x.geojson', geojson())).toBe('geojson');
    expect(is('x', osmXml())).toBe('osm-xml');
    expect(is('x.xml', gpx())).toBe('track-xml');
    expect(is('x', kmlTrack())).toBe('track-xml');
    expect(is('x.csv', csv())).toBe('table');
    expect(is('x', csvCommas())).toBe('table');
    expect(is('x.zip', 'anything')).toBe('archive');
    expect(is('x', '<html><body></body></html>')).toBe('unknown');
  });

  it('[I61] stays a survey where it may be one: GeoJSON of another program, broken JSON, members in another order', () => {
    expect(is('x.geojson', '{"type":"FeatureCollection","features":[]}')).toBe('survey');
    expect(is('x.geojson', 'no json')).toBe('survey');
    expect(is('x.json', '[1, 2]')).toBe('survey');
    const features = Array.from({ length: 3000 }, (_, i) => ({
      type: 'Feature',
      properties: { building: 'yes', i },
      geometry: null,
    }));
    const moved = JSON.stringify({ type: 'FeatureCollection', features, sunside: { version: 1 } });
    expect(moved.length).toBeGreaterThan(131_072);
    expect(is('x.geojson', moved)).toBe('survey');
    const kinds =
      '{"type":"FeatureCollection","features":[{"type":"Feature","properties":{"kind": "runway","building":"no"}}]}';
    expect(is('x.geojson', kinds)).toBe('survey');
  });
});

describe('the ends of a runway from a map', () => {
  it('[I62] are found in what people write', () => {
    expect(designatorsIn('07/25')).toEqual(['07', '25']);
    expect(designatorsIn('7-25')).toEqual(['07', '25']);
    expect(designatorsIn('09L/27R')).toEqual(['09L', '27R']);
    expect(designatorsIn('Runway 36')).toEqual(['36', '18']);
    expect(designatorsIn('27R')).toEqual(['27R', '09L']);
    for (const none of ['', 'main', '40/22', '07/16/25', 'A1/B2']) expect(designatorsIn(none)).toBeNull();
  });

  it('[I63] have the number of the direction in which they are landed on, by the compass', () => {
    // Tucson's declination is about 9 degrees east (from memory): true 120 is magnetic 111, runway 11.
    const a = [-110.95, 32.13] as const;
    const b = destination(a, 120, 3000);
    const instant = Date.UTC(2026, 5, 21);
    for (const label of ['11/29', '29/11', 'RWY 11-29']) {
      expect(namedEnds([a, b], label, 800, instant)).toEqual({ designators: ['11', '29'], doubts: [] });
      expect(namedEnds([b, a], label, 800, instant).designators).toEqual(['29', '11']);
    }
    const unnamed = namedEnds([a, b], '', 800, instant);
    expect(unnamed.designators).toEqual(['11', '29']);
    expect(unnamed.doubts.join(' ')).toContain('no designators');
    expect(namedEnds([a, b], '04/22', 800, instant).doubts.join(' ')).toContain('points to 11/29');
  });
});
