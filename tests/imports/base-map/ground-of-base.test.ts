import { describe, expect, test } from 'vitest';
import { groundLayers, groundOfBase } from '../../../src/imports/base-map/ground-of-base';
import type { BaseFeature, BaseFound } from '../../../src/survey/base-found';
import type { Position } from '../../../src/survey/document';
import { bringIn } from '../../../src/survey/edits/bring-in';
import { sourceMarks } from '../../../src/survey/sources';
import { readContents } from '../../../src/survey/contents';
import { opened, surveyText } from '../../support/contents';

const credit = { text: 'Ground uses from an invented atlas.', mark: 'Invented atlas' };
const around = {
  reference: [18.167, 50.9285] as Position,
  runways: [
    [
      [18.16, 50.928],
      [18.174, 50.929],
    ],
  ] as const satisfies readonly (readonly [Position, Position])[],
};
const lane: readonly Position[] = [
  [18.15, 50.9255],
  [18.17, 50.926],
  [18.185, 50.9265],
];
const ring: readonly Position[] = [
  [18.15, 50.93],
  [18.16, 50.93],
  [18.16, 50.935],
  [18.15, 50.93],
];
const way = (properties: object, coordinates: unknown = lane, layer = 'transportation'): BaseFeature => ({
  layer,
  properties: { ...properties },
  geometry: { type: 'LineString', coordinates },
});
const area = (layer: string, properties: object, coordinates: unknown = [ring]): BaseFeature => ({
  layer,
  properties: { ...properties },
  geometry: { type: 'Polygon', coordinates },
});
const found = (...features: BaseFeature[]): BaseFound => ({ layers: groundLayers, zoom: 15, features });
const read = (...features: BaseFeature[]) => groundOfBase(found(...features), around, credit);
const uses = (...features: BaseFeature[]) => {
  const answer = read(...features);
  return answer.ok ? answer.bringIn.features.map(({ properties }) => properties) : answer.because;
};

describe('ground from the vector base map', () => {
  test('[I220] roads, paths, railways, water, greens, footprints of buildings and the outline of the aerodrome, as an extract of the map would say', () => {
    const use = (feature: BaseFeature) => {
      const answer = uses(feature);
      const [first] =
        typeof answer === 'string' ? [] : (answer as unknown as readonly { use: string; access: string }[]);
      return first ? `${first.use}, ${first.access}` : 'nothing';
    };
    expect(use(way({ class: 'minor' }))).toBe('road, unknown');
    expect(use(way({ class: 'motorway' }))).toBe('motorway, forbidden');
    expect(use(way({ class: 'trunk' }))).toBe('motorway, unknown');
    expect(use(way({ class: 'path', subclass: 'footway', foot: 'designated' }))).toBe('path, public');
    expect(use(way({ class: 'path', subclass: 'cycleway' }))).toBe('path, unknown');
    expect(use(way({ class: 'track', access: 'no' }))).toBe('path, forbidden');
    expect(use(way({ class: 'rail', subclass: 'rail' }))).toBe('rail, unknown');
    expect(use(way({ class: 'transit', subclass: 'tram' }))).toBe('rail, unknown');
    expect(use(area('water', { class: 'lake' }))).toBe('water, unknown');
    expect(use(way({ class: 'canal' }, lane, 'waterway'))).toBe('water, unknown');
    expect(use(area('landcover', { class: 'grass', subclass: 'park' }))).toBe('green, unknown');
    expect(use(area('landuse', { class: 'playground' }))).toBe('green, unknown');
    expect(use(area('aeroway', { class: 'aerodrome' }))).toBe('aerodrome, unknown');
    expect(use(area('building', { render_height: 5 }))).toBe('building, unknown');
  });

  test('[I221] tunnels, streams, ferries, platforms, what is being built, fields and runways are no ground to speak of', () => {
    expect(
      uses(
        way({ class: 'minor', brunnel: 'tunnel' }),
        way({ class: 'minor_construction' }),
        way({ class: 'ferry' }),
        way({ class: 'path', subclass: 'platform' }),
        way({ class: 'stream' }, lane, 'waterway'),
        area('landcover', { class: 'farmland', subclass: 'farmland' }),
        area('landuse', { class: 'residential' }),
        area('aeroway', { class: 'runway' }),
        { layer: 'transportation', properties: { class: 'minor' }, geometry: { type: 'LineString' } },
        way({ class: 'minor' }, [['x', 1], null]),
      ),
    ).toBe('nothing');
  });

  test('[I222] a way has the name that runs along its corners, not that of a street which it crosses', () => {
    const crossing: readonly Position[] = [
      [18.17, 50.92],
      [18.17, 50.926],
      [18.17, 50.93],
    ];
    const answer = uses(
      way({ class: 'minor' }),
      way({ class: 'path', subclass: 'path' }, crossing),
      way({ class: 'minor', name: 'Mill Lane' }, lane, 'transportation_name'),
    );
    const named = typeof answer === 'string' ? [] : answer.map(({ use, name }) => [use, name]);
    expect(new Map(named as [string, string][])).toEqual(
      new Map([
        ['road', 'Mill Lane'],
        ['path', ''],
      ]),
    );
  });

  test('[I223] the piece that two tiles have comes once, pieces far from the runways do not come', () => {
    const far = lane.map(([lng, lat]): Position => [lng + 1, lat]);
    expect(uses(way({ class: 'minor' }), way({ class: 'minor' }), way({ class: 'minor' }, far))).toHaveLength(
      1,
    );
  });

  test('[S355] a town full of footprints, nearer than the lane, does not crowd the lane out', () => {
    const houses = Array.from({ length: 2500 }, (_, k) => {
      const [west, south] = [18.16 + (k % 50) * 1e-4, 50.928 + Math.floor(k / 50) * 1e-5];
      const corners: readonly Position[] = [
        [west, south],
        [west + 5e-5, south],
        [west + 5e-5, south + 5e-6],
        [west, south],
      ];
      return area('building', {}, [corners]);
    });
    const found = uses(...houses, way({ class: 'minor' }), area('water', {}));
    if (typeof found === 'string') throw new Error(found);
    const count = (is: string) => found.filter(({ use }) => use === is).length;
    expect([count('road'), count('water'), count('building')]).toEqual([1, 1, 1000]);
  });

  test('[I224] it says which: no vector map, layers that are not known, too far out, nothing there', () => {
    const because = (base: BaseFound | null) => {
      const answer = groundOfBase(base, around, credit);
      return answer.ok ? 'read' : answer.because;
    };
    const some = found(way({ class: 'minor' }));
    expect(because(null)).toBe('no-vector');
    expect(because({ ...some, layers: ['land', 'water'] })).toBe('schema');
    expect(because({ ...some, zoom: 13.9 })).toBe('zoom');
    expect(because(found())).toBe('nothing');
    expect(because(some)).toBe('read');
  });

  test('[I225] brought in twice it is there once, with its credit', () => {
    const answer = read(way({ class: 'minor' }), area('water', { class: 'lake', name: 'Mere' }));
    if (!answer.ok) throw new Error(answer.because);
    const once = bringIn(opened(surveyText([])), answer.bringIn);
    expect(bringIn(once, answer.bringIn)).toBe(once);
    expect(sourceMarks(once)).toEqual(['Invented atlas']);
    expect(readContents(once).groundUses.map(({ use, name }) => [use, name])).toEqual([
      ['water', 'Mere'],
      ['road', ''],
    ]);
  });
});
