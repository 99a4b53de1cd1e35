import { describe, expect, test } from 'vitest';
import type { Survey } from '../../../src/survey/document';
import { deleteFeature } from '../../../src/survey/edits/delete-feature';
import { duplicateFeature } from '../../../src/survey/edits/duplicate-feature';
import { reshapeFeature } from '../../../src/survey/edits/reshape-feature';
import { setCurrent, setEndsInUse, setMoments, setSite } from '../../../src/survey/edits/set-members';
import { setAccess, setProperties, setRunwayEnd } from '../../../src/survey/edits/set-properties';
import {
  shapeOf,
  whyVertexStays,
  withoutVertex,
  withVertexAdded,
  withVertexAt,
} from '../../../src/survey/edits/vertices';
import { deepFreeze } from '../../../src/survey/freeze';
import { feature, opened, runwayFeature, spotFeature, surveyText } from '../../support/contents';

const ring = [
  [8, 47],
  [8.1, 47],
  [8.1, 47.1],
  [8, 47],
] as const;
const survey = deepFreeze(
  opened(
    surveyText(
      [
        runwayFeature(
          'rwy',
          [8.5, 47.4],
          [8.53, 47.38],
          [{ designator: '14', note: 'kept' }, { designator: '32' }],
          {
            operator: 'kept',
          },
        ),
        spotFeature('spot', [8.51, 47.41], { access: { status: 'ask', key: 'kept' } }),
        feature('taxi', 'taxi-route', 'LineString', [
          [8.5, 47.4],
          [8.51, 47.4],
          [8.52, 47.39],
        ]),
        feature('area', 'no-go', 'Polygon', [ring]),
        {
          ...feature('tree', 'tree', 'Point', [1, 2]),
          bbox: [1, 2, 1, 2],
          geometry: { type: 'Point', coordinates: [1, 2], bbox: [1, 2, 1, 2], accuracy: 3 },
        },
      ],
      {
        site: { name: 'Field', icao: 'XXXX' },
        flow: { calm: 0, configurations: [{ name: 'south', hours: 'kept' }] },
      },
    ),
  ),
);
const get = (s: Survey, id: string) => s.features.find((f) => f.id === id);
const shape = (id: string) => {
  const found = get(survey, id);
  const got = found && shapeOf(found);
  if (!got) throw new Error(`expected a shape of ${id}`);
  return got;
};

describe('edits', () => {
  test('[S52] set what was typed and keep what was not; undefined takes away', () => {
    const named = setProperties(survey, 'rwy', { name: 'Main', surface: undefined, operator: undefined });
    expect(get(named, 'rwy')?.properties).toMatchObject({ kind: 'runway', name: 'Main' });
    expect(Object.keys(get(named, 'rwy')?.properties ?? {})).not.toContain('operator');
    const access = setAccess(survey, 'spot', { status: 'public' });
    expect(get(access, 'spot')?.properties?.['access']).toEqual({ status: 'public', key: 'kept' });
    const end = setRunwayEnd(survey, 'rwy', 0, { glide: 3.5 });
    expect(get(end, 'rwy')?.properties).toMatchObject({
      operator: 'kept',
      ends: [{ designator: '14', note: 'kept', glide: 3.5 }, { designator: '32' }],
    });
    expect(setSite(survey, { name: 'Other' }).sunside['site']).toEqual({ name: 'Other', icao: 'XXXX' });
    expect(setMoments(survey, { a: '07:10' }).sunside['moments']).toEqual({ a: '07:10' });
    expect(setCurrent(survey, { body: 'b' }).sunside['current']).toEqual({ body: 'b' });
  });

  test('[S53] ends in use change in one configuration, which keeps its own words', () => {
    const ends = { arrivals: [{ runway: 'rwy', end: 1 as const }], departures: [] };
    expect(setEndsInUse(survey, 0, ends).sunside['flow']).toEqual({
      calm: 0,
      configurations: [
        { name: 'south', hours: 'kept', arrivals: [{ runway: 'rwy', end: 1 }], departures: [] },
      ],
    });
    const two = setEndsInUse(survey, 1, ends).sunside['flow'] as { configurations: unknown[] };
    expect(two.configurations).toHaveLength(2);
  });

  test('[S54] an unknown id changes nothing: the very same survey', () => {
    expect(setProperties(survey, 'nobody', { name: 'x' })).toBe(survey);
    expect(deleteFeature(survey, 'nobody')).toBe(survey);
    expect(reshapeFeature(survey, 'nobody', shape('spot'))).toBe(survey);
    expect(duplicateFeature(survey, 'nobody', 'new', shape('spot'))).toBe(survey);
  });

  test('[S55] a copy stands behind the original, says so in its name, and has no stale bounding box', () => {
    const copied = duplicateFeature(survey, 'spot', 'new', { type: 'Point', coordinates: [8.6, 47.4] });
    expect(copied.features.map((f) => f.id)).toEqual(['rwy', 'spot', 'new', 'taxi', 'area', 'tree']);
    expect(get(copied, 'new')?.properties).toMatchObject({ name: 'spot (copy)', kind: 'standing-spot' });
    const moved = { type: 'Point', coordinates: [5, 6] } as const;
    for (const tree of [
      get(duplicateFeature(survey, 'tree', 'new', moved), 'new'),
      get(reshapeFeature(survey, 'tree', moved), 'tree'),
    ]) {
      expect(tree?.geometry).toEqual({ type: 'Point', coordinates: [5, 6], accuracy: 3 });
      expect(Object.keys(tree ?? {})).not.toContain('bbox');
    }
  });

  test('[S56] vertices: the first and the last of a ring are one', () => {
    expect(withVertexAt(shape('area'), { ring: 0, index: 0 }, [7.9, 46.9]).coordinates).toEqual([
      [
        [7.9, 46.9],
        [8.1, 47],
        [8.1, 47.1],
        [7.9, 46.9],
      ],
    ]);
    expect(withVertexAt(shape('area'), { ring: 0, index: 3 }, [7.9, 46.9])).toEqual(
      withVertexAt(shape('area'), { ring: 0, index: 0 }, [7.9, 46.9]),
    );
    const four = withVertexAdded(shape('area'), { ring: 0, index: 2 }, [8.2, 47.05]);
    expect(four.coordinates).toEqual([
      [
        [8, 47],
        [8.1, 47],
        [8.2, 47.05],
        [8.1, 47.1],
        [8, 47],
      ],
    ]);
    expect(withoutVertex(four, { ring: 0, index: 0 }).coordinates).toEqual([
      [
        [8.1, 47],
        [8.2, 47.05],
        [8.1, 47.1],
        [8.1, 47],
      ],
    ]);
    expect(withoutVertex(shape('taxi'), { ring: 0, index: 1 }).coordinates).toEqual([
      [8.5, 47.4],
      [8.52, 47.39],
    ]);
    expect(withVertexAdded(shape('taxi'), { ring: 0, index: 3 }, [9, 47]).coordinates).toHaveLength(4);
  });

  test('[S57] why a vertex stays', () => {
    const why = (id: string) => {
      const found = get(survey, id);
      return found ? whyVertexStays(found, { ring: 0, index: 0 }) : 'no feature';
    };
    expect(why('rwy')).toBe('runway-has-two-ends');
    expect(why('taxi')).toBeNull();
    expect(why('area')).toBe('too-few-vertices');
    expect(why('spot')).toBe('too-few-vertices');
  });
});
