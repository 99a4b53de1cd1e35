import fc from 'fast-check';

/** What a file may hold to hurt the program that opens it. */

/** Names with markup, from right to left, with marks that turn the direction, with halves of characters. */
export const hostileNames: readonly string[] = [
  '<img src=x onerror="document.body.dataset.ran=1">',
  '<script>document.body.dataset.ran=1</script>',
  '"><svg/onload=document.body.dataset.ran=1>',
  '{{constructor.constructor("document.body.dataset.ran=1")()}}',
  'javascript:document.body.dataset.ran=1',
  'مطار بعيد',
  'שדה תעופה 09/27',
  '\u202Efdp.tset\u202C',
  '\u2067abc',
  '\uD800',
  'a\uDC00b',
  '\u0000\u0001\u0008',
  'Z̸̢̛a̷l̴g̵o̶'.repeat(20),
  '👩‍👩‍👧‍👦'.repeat(60),
  'word '.repeat(400),
  'W'.repeat(5000),
  '',
  ' ',
  '\n\n\t',
];

export const hostileKeys: readonly string[] = [
  '__proto__',
  'constructor',
  'prototype',
  'toString',
  'hasOwnProperty',
  'valueOf',
  'length',
  'then',
  'toJSON',
  '',
  '0',
  '-1',
];

const numbers = fc.constantFrom(0, -0, 1e308, -1e308, 5e-324, 1e21, -180, 180, 180.0000001, 90, -91, 2 ** 53);
const text = fc.oneof(fc.constantFrom(...hostileNames), fc.string({ unit: 'binary' }));
const key = fc.oneof(fc.constantFrom(...hostileKeys), fc.string());

/** Any JSON, much of it with hostile keys. As entries: an object literal would lose a key "__proto__". */
const anything: fc.Arbitrary<unknown> = fc.letrec((tie) => ({
  value: fc.oneof(
    { maxDepth: 4, depthSize: 'small' },
    numbers,
    text,
    fc.constantFrom(null, true, false),
    fc.array(tie('value'), { maxLength: 4 }),
    fc.array(fc.tuple(key, tie('value')), { maxLength: 4 }).map((entries) => Object.fromEntries(entries)),
  ),
})).value;

const position = fc.oneof(
  fc.tuple(fc.double({ min: -180, max: 180, noNaN: true }), fc.double({ min: -90, max: 90, noNaN: true })),
  fc.array(fc.oneof(numbers, anything), { maxLength: 3 }),
);
const coordinates = fc.oneof(
  position,
  fc.array(position, { maxLength: 5 }),
  fc.array(fc.array(position, { maxLength: 5 }), { maxLength: 3 }),
  anything,
);

const kinds = [
  'runway',
  'standing-spot',
  'obstacle',
  'no-go',
  'apron',
  'taxi-route',
  'flight-path',
  'log-entry',
  'constructor',
  '__proto__',
];
const members = [
  'name',
  'ends',
  'width',
  'height',
  'heights',
  'eyeHeight',
  'access',
  'sight',
  'leafMonths',
  'heading',
  'notes',
  ...hostileKeys,
];

const properties = fc
  .tuple(
    fc.constantFrom(...kinds),
    fc.array(fc.tuple(fc.constantFrom(...members), anything), { maxLength: 6 }),
  )
  .map(([kind, entries]) => Object.fromEntries([...entries, ['kind', kind]]) as unknown);

const feature = fc.oneof(
  {
    weight: 9,
    arbitrary: fc.record({
      type: fc.constantFrom('Feature', 'feature', '__proto__'),
      id: fc.oneof(fc.constantFrom('a', 'b', '__proto__', 'constructor', 1, null), anything),
      properties: fc.oneof(properties, anything),
      geometry: fc.oneof(
        fc.record({ type: fc.constantFrom('Point', 'LineString', 'Polygon', 'Curve'), coordinates }),
        anything,
      ),
    }),
  },
  { weight: 1, arbitrary: anything },
);

const sunside = fc
  .array(
    fc.tuple(
      fc.constantFrom(
        'version',
        'site',
        'kit',
        'kits',
        'subjects',
        'current',
        'moments',
        'flow',
        'strays',
        ...hostileKeys,
      ),
      anything,
    ),
    { maxLength: 8 },
  )
  .map((entries) => Object.fromEntries(entries) as unknown);

/** The text of a file that looks like a survey and is made to hurt. */
export const hostileText: fc.Arbitrary<string> = fc
  .record({
    features: fc.array(feature, { maxLength: 8 }),
    sunside: fc.oneof(sunside, anything),
    foreign: fc.array(fc.tuple(key, anything), { maxLength: 3 }),
  })
  .map(({ features, sunside: member, foreign }) =>
    JSON.stringify(
      Object.fromEntries([
        ...foreign,
        ['type', 'FeatureCollection'],
        ['features', features],
        ['sunside', member],
      ]),
    ),
  );

/** A survey file of many features, all of one kind. */
export function manyFeatures(count: number, kind: 'standing-spot' | 'obstacle' | 'tree'): string {
  const features = Array.from({ length: count }, (_, i) => {
    const [lng, lat] = [8 + (i % 300) * 0.0005, 47 + Math.floor(i / 300) * 0.0005];
    const at = [lng, lat];
    const geometry =
      kind === 'obstacle'
        ? { type: 'LineString', coordinates: [at, [lng + 0.0002, lat]] }
        : { type: 'Point', coordinates: at };
    return JSON.stringify({ type: 'Feature', id: `f${i}`, properties: { kind, name: `No ${i}` }, geometry });
  });
  return surveyOf(features);
}

const runways = [[8, 47, 8.03, 47.01] as const, [8.01, 47.02, 8.02, 46.99] as const].map(([a, b, c, d], i) =>
  JSON.stringify({
    type: 'Feature',
    id: `runway${i}`,
    properties: { kind: 'runway', ends: [{ designator: '07' }, { designator: '25' }] },
    geometry: {
      type: 'LineString',
      coordinates: [
        [a, b],
        [c, d],
      ],
    },
  }),
);

/** Features as texts -> a survey file with two runways, so that there is something to compute. */
export const surveyOf = (features: readonly string[], site = '"Many"'): string =>
  `{"type":"FeatureCollection","sunside":{"version":1,"site":{"name":${site}}},"features":[${[...runways, ...features].join(',')}]}`;

export const nested = (depth: number): string => '['.repeat(depth) + ']'.repeat(depth);
