import { describe, expect, test } from 'vitest';
import { readContents } from '../../src/survey/contents';
import { openSurvey } from '../../src/survey/open';
import { saveSurvey } from '../../src/survey/save';
import { contentsOf, feature, opened, spotFeature, surveyText } from '../support/contents';

const refusal = (text: string) => {
  const result = openSurvey(text);
  return result.ok ? 'opened' : result.reason;
};
const problemsOnOpening = (text: string) => {
  const result = openSurvey(text);
  return result.ok ? result.problems : [];
};

describe('files that are no survey', () => {
  test('[S10] empty', () => {
    for (const text of ['', '  \n\t', '\uFEFF']) expect(refusal(text)).toBe('The file is empty.');
  });

  test('[S11] not JSON: with the place where it breaks', () => {
    expect(refusal('{ "type": "FeatureCollection",\n  "features": [ }')).toBe(
      'The file is not JSON: it breaks at line 2, column 17.',
    );
    expect(refusal('\uFEFF<kml></kml>')).toBe('The file is not JSON: it breaks at line 1, column 1.');
    expect(refusal('{"type": "FeatureCollection", "features": [\n')).toBe(
      'The file is not JSON: it breaks off at line 2, column 1, before its end.',
    );
  });

  test('[S12] JSON that is no FeatureCollection: the member and what it is instead', () => {
    expect(refusal('[]')).toBe('The file holds [], not a GeoJSON FeatureCollection.');
    expect(refusal('null')).toBe('The file holds null, not a GeoJSON FeatureCollection.');
    expect(refusal('{"type":"Feature","properties":null,"geometry":null}')).toMatch(
      /^At type: expected "FeatureCollection", got "Feature"/,
    );
    expect(refusal('{"type":"FeatureCollection"}')).toMatch(/^At features: expected a list/);
    expect(refusal('{"type":"FeatureCollection","features":{}}')).toMatch(/^At features: expected a list/);
    const long = JSON.stringify({ type: 'x'.repeat(100_000), features: [] });
    expect(refusal(long).length).toBeLessThan(200);
  });

  test('[S13] a byte order mark is no part of the survey', () => {
    expect(refusal(`\uFEFF${surveyText([])}`)).toBe('opened');
  });
});

describe('surveys of other programs and versions', () => {
  test('[S14] a FeatureCollection without `sunside` opens with defaults', () => {
    const survey = opened('{"type":"FeatureCollection","features":[],"name":"layer"}');
    expect(survey.sunside).toEqual({ version: 1 });
    const contents = readContents(survey);
    expect(contents.problems).toEqual([]);
    expect(contents.site).toMatchObject({ timeZone: 'UTC', elevation: null, reference: [0, 0] });
    expect(contents.subjects.length).toBeGreaterThan(35);
    expect(JSON.parse(saveSurvey(survey))).toMatchObject({ name: 'layer' });
  });

  test('[S15] a newer version is opened, marked, and keeps its number', () => {
    const text = '{"type":"FeatureCollection","sunside":{"version":2,"later":[1]},"features":[{"later":1}]}';
    const result = openSurvey(text);
    expect(result).toMatchObject({ ok: true, newer: true, survey: { sunside: { version: 2, later: [1] } } });
    expect(openSurvey(surveyText([]))).toMatchObject({ newer: false });
  });

  test.each([['"1"'], ['0'], ['1.5'], ['-3'], ['null'], ['{}']])(
    '[S16] version %s is none: read as version 1, and said',
    (version) => {
      const text = `{"type":"FeatureCollection","sunside":{"version":${version}},"features":[]}`;
      expect(problemsOnOpening(text)).toEqual([
        { id: null, reason: expect.stringContaining('sunside.version') as string, used: true },
      ]);
      expect(opened(text).sunside['version']).toBe(1);
    },
  );
});

describe('ids', () => {
  const point = (id?: unknown) => {
    const { id: _own, ...rest } = spotFeature('x', [8, 47]);
    return id === undefined ? rest : { id, ...rest };
  };

  test('[S17] absent, empty, repeated and unusable ids get a new one, and each is said', () => {
    const text = surveyText([
      point('a'),
      point(),
      point('a'),
      point(''),
      point({ x: 1 }),
      point(null),
      point('b'),
    ]);
    const { features } = opened(text);
    const ids = features.map((f) => f.id);
    expect(new Set(ids).size).toBe(7);
    expect([ids[0], ids[6]]).toEqual(['a', 'b']);
    for (const id of ids.slice(1, 6)) expect(id).toMatch(/^[a-z0-9]{6}$/);
    const problems = problemsOnOpening(text);
    expect(problems.map((p) => /^features\.(\d)\.id/.exec(p.reason)?.[1])).toEqual(['1', '2', '3', '4', '5']);
    expect(problems.every((p) => p.used)).toBe(true);
  });

  test('[S18] a number keeps its digits', () => {
    const { features } = opened(surveyText([point(12), point('7'), point(7)]));
    expect(features.slice(0, 2).map((f) => f.id)).toEqual(['12', '7']);
    expect(features[2]?.id).toMatch(/^[a-z0-9]{6}$/);
  });

  test('[S19] ids come from getRandomValues alone: there is no randomUUID on plain http', () => {
    const original = Object.getOwnPropertyDescriptor(crypto, 'randomUUID');
    Object.defineProperty(crypto, 'randomUUID', { value: undefined, configurable: true });
    try {
      expect(opened(surveyText([point()])).features[0]?.id).toMatch(/^[a-z0-9]{6}$/);
    } finally {
      if (original) Object.defineProperty(crypto, 'randomUUID', original);
      else Reflect.deleteProperty(crypto, 'randomUUID');
    }
  });
});

describe('features that cannot be used', () => {
  test('[S20] are listed with the place and stay in the file; the others are used', () => {
    const features = [
      spotFeature('good', [8, 47]),
      spotFeature('east', [200, 47]),
      spotFeature('north', [8, -91]),
      feature('text', 'standing-spot', 'Point', ['8', 47]),
      feature('short', 'runway', 'LineString', [[8, 47]]),
      feature('shape', 'runway', 'Polygon', []),
      feature('ring', 'no-go', 'Polygon', [
        [
          [8, 47],
          [8.1, 47],
          [8, 47],
        ],
      ]),
      { type: 'Feature', id: 'nowhere', properties: { kind: 'standing-spot' }, geometry: null },
      feature(
        'far',
        'flight-path',
        'LineString',
        [
          [8, 47],
          [8, 99],
        ],
        { heights: [1, 2] },
      ),
    ];
    const text = surveyText(features);
    const contents = readContents(opened(text));
    expect(contents.spots.map((s) => s.id)).toEqual(['good']);
    expect([contents.runways, contents.noGoAreas, contents.flightPaths]).toEqual([[], [], []]);
    expect(contents.problems.map((p) => [p.id, p.used])).toEqual(features.slice(1).map((f) => [f.id, false]));
    const reasons: Record<string, string> = {};
    for (const p of contents.problems) reasons[p.id ?? ''] = p.reason;
    expect(reasons['east']).toBe('geometry.coordinates: longitude 200 is not within ±180 degrees');
    expect(reasons['north']).toBe('geometry.coordinates: latitude -91 is not within ±90 degrees');
    expect(reasons['text']).toContain('"8"');
    expect(reasons['short']).toContain('at least 2 positions, got 1');
    expect(reasons['shape']).toContain('expected LineString, got "Polygon"');
    expect(reasons['ring']).toContain('at least three corners');
    expect(reasons['nowhere']).toBe('geometry: missing');
    expect(reasons['far']).toContain('geometry.coordinates.1: latitude 99');
    const saved = JSON.parse(saveSurvey(opened(text))) as { features: unknown[] };
    expect(saved.features).toEqual(JSON.parse(JSON.stringify(features)));
  });

  test('[S21] what is no feature at all is listed and kept beside the features', () => {
    const text = '{"type":"FeatureCollection","features":[7,null,["x"],{"id":"a"}]}';
    const survey = opened(text);
    expect(survey.features).toEqual([{ type: 'Feature', id: 'a', properties: null, geometry: null }]);
    expect(survey.sunside['strays']).toEqual([7, null, ['x']]);
    expect(problemsOnOpening(text).map((p) => [p.reason.slice(0, 10), p.used])).toEqual([
      ['features.0', false],
      ['features.1', false],
      ['features.2', false],
    ]);
    // Opening what was saved neither repeats nor loses them.
    expect(opened(saveSurvey(survey)).sunside['strays']).toEqual([7, null, ['x']]);
  });

  test('[S22] properties and geometry that are no objects are said', () => {
    const text = '{"type":"FeatureCollection","features":[{"id":"a","properties":"x","geometry":[8,47]}]}';
    expect(problemsOnOpening(text)).toEqual([
      { id: 'a', reason: 'properties: expected an object, got "x"; left out', used: false },
      { id: 'a', reason: 'geometry: expected an object, got [8,47]; left out', used: false },
    ]);
  });

  test('[S23] a third number is dropped and said, in our kinds only', () => {
    const text = surveyText([
      feature('spot', 'standing-spot', 'Point', [8, 47, 431]),
      feature('area', 'apron', 'Polygon', [
        [
          [8, 47, 1],
          [8.1, 47],
          [8.1, 47.1],
          [8, 47, 1],
        ],
      ]),
      feature('other', 'tree', 'Point', [8, 47, 431]),
    ]);
    expect(opened(text).features.map((f) => f.geometry?.['coordinates'])).toEqual([
      [8, 47],
      [
        [
          [8, 47],
          [8.1, 47],
          [8.1, 47.1],
          [8, 47],
        ],
      ],
      [8, 47, 431],
    ]);
    expect(problemsOnOpening(text)).toEqual(
      ['spot', 'area'].map((id) => ({
        id,
        reason: expect.stringContaining('a third number') as string,
        used: true,
      })),
    );
  });

  test('[S24] an open ring is closed, and rings are wound as RFC 7946 3.1.6 asks', () => {
    const outer = [
      [8, 47],
      [8, 47.2],
      [8.3, 47.2],
      [8.3, 47],
    ];
    const hole = [
      [8.1, 47.05],
      [8.2, 47.05],
      [8.2, 47.1],
      [8.1, 47.05],
    ];
    const ring = opened(surveyText([feature('a', 'no-go', 'Polygon', [outer, hole])])).features[0];
    expect(ring?.geometry?.['coordinates']).toEqual([
      [
        [8, 47],
        [8.3, 47],
        [8.3, 47.2],
        [8, 47.2],
        [8, 47],
      ],
      [
        [8.1, 47.05],
        [8.2, 47.1],
        [8.2, 47.05],
        [8.1, 47.05],
      ],
    ]);
    // Over the antimeridian the winding is that of the short way round.
    const over = [
      [
        [179.9, 10],
        [-179.9, 10],
        [-179.9, 10.1],
        [179.9, 10.1],
        [179.9, 10],
      ],
    ];
    const kept = opened(surveyText([feature('a', 'no-go', 'Polygon', over)])).features[0];
    expect(kept?.geometry?.['coordinates']).toEqual(over);
  });
});

describe('members that do not fit', () => {
  test('[S25] take their documented default, with the path, and leave their neighbours alone', () => {
    const contents = contentsOf(
      [
        feature(
          'rwy',
          'runway',
          'LineString',
          [
            [8, 47],
            [8.02, 47.01],
          ],
          {
            width: 'wide',
            ends: [{ designator: '07', glide: 45, displaced: 120 }, 'none'],
          },
        ),
        spotFeature('spot', [8, 47], { eyeHeight: -2, access: { status: 'perhaps', contact: 'gate' } }),
      ],
      { site: { elevation: '432', name: 'Field' }, moments: { a: '25:00', b: '19:30' } },
    );
    expect(contents.runways[0]).toMatchObject({
      width: 30,
      ends: [
        { designator: '07', glide: 3, displaced: 120, crossingHeight: 15.24, circuit: 'left', closed: false },
        { designator: '', glide: 3, elevation: null },
      ],
    });
    expect(contents.spots[0]).toMatchObject({
      eyeHeight: 1.7,
      access: { status: 'unknown', contact: 'gate' },
    });
    expect(contents.site).toMatchObject({ elevation: null, name: 'Field' });
    expect(contents.moments).toMatchObject({ a: '08:00', b: '19:30' });
    const places = contents.problems.map((p) => `${p.id} ${p.reason.split(':')[0]}`);
    expect(places.sort()).toEqual([
      'null sunside.moments.a',
      'null sunside.site.elevation',
      'rwy ends.0.glide',
      'rwy ends.1',
      'rwy width',
      'spot access.status',
      'spot eyeHeight',
    ]);
    expect(contents.problems.every((p) => p.used)).toBe(true);
  });

  test('[S26] kit and subjects: entries that do not fit are set aside, and nothing left means the starter list', () => {
    const body = { key: 'b', sensorWidth: 36, sensorHeight: 24, pixelsWide: 6000, pixelsHigh: 4000 };
    const lens = { key: 'l', shortest: 100, longest: 400, widestAperture: 5.6 };
    const contents = contentsOf([], {
      kit: {
        bodies: [{ ...body, sensorWidth: 0 }, body, { ...body, sensorWidth: 20 }],
        lenses: [
          { ...lens, shortest: 500 },
          { ...lens, key: 'm' },
        ],
      },
      subjects: [{ key: 'x', length: 10 }],
      current: { body: 'gone' },
    });
    expect(contents.kit).toMatchObject({
      fill: 0.8,
      bodies: [{ key: 'b', sensorWidth: 36 }],
      lenses: [{ key: 'm' }],
    });
    expect(contents.subjects.length).toBeGreaterThan(35);
    expect(contents.body.key).toBe('b');
    const said = contents.problems.map((p) => [p.used, p.reason.split(':')[0]]);
    expect(said).toEqual([
      [false, 'sunside.kit.bodies.0.sensorWidth'],
      [false, 'sunside.kit.bodies.2.key'],
      [false, 'sunside.kit.lenses.0.longest'],
      [false, 'sunside.subjects.0.span'],
      [true, 'sunside.current.body'],
    ]);
  });

  test('[S27] a `sunside` that is no object is said, and defaults are used', () => {
    const text = '{"type":"FeatureCollection","sunside":[1],"features":[]}';
    expect(problemsOnOpening(text)).toEqual([
      { id: null, reason: 'sunside: expected an object, got [1]; defaults are used', used: true },
    ]);
  });
});
