import { describe, expect, test } from 'vitest';
import { statusOn } from '../../../src/figures/access/status-on';
import { figuresFor } from '../../../src/figures/figures-for';
import { runwayLength } from '../../../src/figures/geometry/along-runway';
import { readPreferences } from '../../../src/state/preferences.svelte';
import { readContents } from '../../../src/survey/contents';
import type { Survey, SurveyFeature } from '../../../src/survey/document';
import type { JsonObject } from '../../../src/survey/json';
import { contentsGroups, keptAsTheyAre } from '../../../src/ui/contents/contents-list';
import { featureTitle, kindTitle } from '../../../src/ui/words/titles';
import { formatsFor } from '../../../src/ui/formats';

const feature = (id: string, properties: JsonObject, geometry: JsonObject): SurveyFeature => ({
  type: 'Feature',
  id,
  properties,
  geometry,
});
const point = (lng: number, lat: number) => ({ type: 'Point', coordinates: [lng, lat] });
const square = {
  type: 'Polygon',
  coordinates: [
    [
      [8, 47],
      [8.01, 47],
      [8.01, 47.01],
      [8, 47],
    ],
  ],
};

const survey: Survey = {
  type: 'FeatureCollection',
  sunside: { version: 1, site: { reference: [8.02, 47] } },
  features: [
    // 0.01 degrees of latitude at 47 north are 1111.7 m: a (1 - e2) / (1 - e2 sin2 47)^1.5 of WGS84, times pi / 18000.
    feature('n1', { kind: 'no-go', reason: 'farmland' }, square),
    feature('s1', { kind: 'standing-spot', name: 'Bank', access: { status: 'ask' } }, point(8.02, 46.99)),
    feature(
      'r1',
      { kind: 'runway', ends: [{ designator: '09' }, { designator: '27' }] },
      {
        type: 'LineString',
        coordinates: [
          [8.01, 47],
          [8.03, 47],
        ],
      },
    ),
    feature('s2', { kind: 'standing-spot', access: { status: 'forbidden' } }, point(8.02, 47.02)),
    feature('s3', { kind: 'standing-spot', name: 'Lane' }, point(8.02, 47)),
    feature('x1', { kind: 'bird-hide' }, point(8, 47)),
    feature('x2', { kind: 'bird-hide' }, point(8, 47)),
    feature('x3', {}, point(8, 47)),
    feature('x4', { kind: 'runway' }, point(8, 47)),
  ],
};
const contents = readContents(survey);
const figures = figuresFor(contents, Date.UTC(2026, 5, 21, 12), null);
const format = formatsFor(readPreferences('{"lengths":"m"}'));
const access = contents.spots.map((spot) => statusOn(spot.access, '2026-06-21'));
const lengths = contents.runways.map(runwayLength);
const groups = contentsGroups(contents, { ...figures, lengths, access, fieldForbids: false }, format);

describe('the list of what a survey contains', () => {
  test('is grouped, runways first, without empty groups', () => {
    expect(groups.map((g) => [g.title, g.items.map((i) => i.id)])).toEqual([
      ['Runways', ['r1']],
      ['Standing spots', ['s1', 's2', 's3']],
      ['No-go areas', ['n1']],
    ]);
  });

  test('says of a spot how far the centreline is, on which side, and whether one may stand there', () => {
    const spots = groups.find((g) => g.title === 'Standing spots')?.items ?? [];
    expect(spots.map((s) => [s.name, s.badge, s.forbidden])).toEqual([
      ['Bank', 'ask: check first', false],
      ['Standing spot 2', 'forbidden', true],
      ['Lane', 'check first', false],
    ]);
    expect(spots[0]?.detail).toBe('1,112 m from 09/27, south side');
    expect(spots[1]?.detail).toBe('2,223 m from 09/27, north side');
    expect(spots[2]?.detail).toBe('0 m from 09/27');
  });

  test('[F767] says at every spot where the field forbids photographs', () => {
    const shut = contentsGroups(contents, { ...figures, lengths, access, fieldForbids: true }, format);
    const spots = shut.find((g) => g.title === 'Standing spots')?.items ?? [];
    expect(spots.map((s) => [s.badge, s.forbidden])).toEqual([
      ['field forbids photographs', true],
      ['forbidden', true],
      ['field forbids photographs', true],
    ]);
  });

  test('[I80] keeps the lines of what has not changed: a map that was brought in has thousands', () => {
    const line = {
      type: 'LineString',
      coordinates: [
        [8, 47],
        [8.01, 47],
      ],
    };
    const road = feature('g2', { kind: 'ground-use', name: 'Airport Road', access: 'forbidden' }, line);
    const items = (properties: JsonObject) => {
      const features = [feature('g1', { kind: 'ground-use', use: 'path', ...properties }, line), road];
      return contentsGroups(
        readContents({ ...survey, features }),
        { lengths: [], spots: [], access: [], fieldForbids: false },
        format,
      );
    };
    const [before, after] = [items({})[0]?.items, items({ name: 'Lane' })[0]?.items];
    expect(before?.map((i) => [i.name, i.detail])).toEqual([
      ['Path 1', ''],
      ['Airport Road', 'forbidden'],
    ]);
    expect(after?.map((i) => i.name)).toEqual(['Lane', 'Airport Road']);
    expect(after?.[1]).toBe(before?.[1]);
  });

  test('counts what it does not know, and what it cannot read, apart', () => {
    expect(keptAsTheyAre(survey, new Set(['x4']))).toEqual([
      ['bird-hide', 2],
      ['without a kind', 1],
      ['runway, set aside', 1],
    ]);
  });
});

test('messages call a feature by its name, else by its kind, else as the file has it', () => {
  expect(['s1', 's2', 'x1', 'x3', 'gone'].map((id) => featureTitle(survey, id))).toEqual([
    'Bank',
    'Standing spot',
    'bird-hide',
    'Feature',
    'Feature',
  ]);
  expect(kindTitle('constructor')).toBe('constructor');
});
