import fc from 'fast-check';

/** JSON as files hold it: no -0, which JSON.stringify writes as 0, and keys that trip up careless copying. */
const awkwardKey = fc.constantFrom(
  '__proto__',
  'constructor',
  'toString',
  '',
  'kind',
  '0',
  'ключ',
  'a.b',
  'length',
);
const scalar = fc.oneof(
  fc.constant(null),
  fc.boolean(),
  fc.integer(),
  fc.double({ noNaN: true, noDefaultInfinity: true }).map((x) => (Object.is(x, -0) ? 0 : x)),
  fc.string(),
  fc.string({ unit: 'grapheme' }),
);
const { value: anyJson } = fc.letrec<{ value: unknown }>((tie) => ({
  value: fc.oneof(
    { maxDepth: 5, withCrossShrink: true },
    { arbitrary: scalar, weight: 3 },
    { arbitrary: fc.array(tie('value'), { maxLength: 3 }), weight: 1 },
    { arbitrary: objectOf(tie('value')), weight: 2 },
  ),
}));

/** Own members even where the key is `__proto__`, as JSON.parse makes them. */
function objectOf(value: fc.Arbitrary<unknown>): fc.Arbitrary<Record<string, unknown>> {
  const key = fc.oneof(
    { arbitrary: fc.string({ maxLength: 8 }), weight: 2 },
    { arbitrary: awkwardKey, weight: 1 },
  );
  return fc.array(fc.tuple(key, value), { maxLength: 4 }).map((entries) => Object.fromEntries(entries));
}
export const anyObject = objectOf(anyJson);

const decimals = (limit: number) =>
  fc.integer({ min: -limit * 1e7, max: limit * 1e7 }).map((n) => (n === 0 ? 0 : n / 1e7));
export const position = fc.tuple(decimals(180), decimals(90));

/** A closed ring, counter-clockwise, that stays on one side of the antimeridian. */
export const ring = fc
  .tuple(
    decimals(170),
    decimals(80),
    fc.integer({ min: 1, max: 900_000 }),
    fc.integer({ min: 1, max: 900_000 }),
  )
  .map(([west, south, wide, high]) => {
    const corner = (x: number, y: number) => [
      Math.round(west * 1e7 + x * wide) / 1e7,
      Math.round(south * 1e7 + y * high) / 1e7,
    ];
    return [corner(0, 0), corner(1, 0), corner(1, 1), corner(0, 1), corner(0, 0)];
  });

const line = (least: number, most = 5) => fc.array(position, { minLength: least, maxLength: most });
const geometryOf = {
  runway: line(2, 2).map((coordinates) => ({ type: 'LineString', coordinates })),
  'standing-spot': position.map((coordinates) => ({ type: 'Point', coordinates })),
  obstacle: ring.map((r) => ({ type: 'Polygon', coordinates: [r] })),
  'no-go': ring.map((r) => ({ type: 'Polygon', coordinates: [r] })),
  apron: ring.map((r) => ({ type: 'Polygon', coordinates: [r] })),
  'taxi-route': line(2).map((coordinates) => ({ type: 'LineString', coordinates })),
  'flight-path': line(2).map((coordinates) => ({ type: 'LineString', coordinates })),
  'log-entry': position.map((coordinates) => ({ type: 'Point', coordinates })),
};
export const kinds = Object.keys(geometryOf) as (keyof typeof geometryOf)[];

const foreignMembers = anyObject.map((object) =>
  Object.fromEntries(
    Object.entries(object).filter(
      ([key]) => !['type', 'id', 'properties', 'geometry', 'features', 'sunside', 'bbox'].includes(key),
    ),
  ),
);

const ours = fc.constantFrom(...kinds).chain((kind) =>
  fc
    .tuple(foreignMembers, anyObject, geometryOf[kind], foreignMembers)
    .map(([members, properties, geometry, inGeometry]) => ({
      ...members,
      type: 'Feature',
      properties: { ...properties, kind },
      geometry: { ...inGeometry, ...geometry },
    })),
);
/** Another program's kind, with heights and shapes that are none of our business. */
const foreign = fc
  .tuple(foreignMembers, anyObject, fc.oneof(fc.constant(null), anyObject))
  .map(([members, properties, geometry]) => ({
    ...members,
    type: 'Feature',
    properties: { ...properties, kind: 'hide-out' },
    geometry: geometry && { ...geometry, type: 'MultiPoint', coordinates: [[7, 47, 1200.5]] },
  }));

/** A survey file's value: our kinds and others, unknown members at every level. */
export const surveyValue = fc
  .tuple(
    foreignMembers,
    anyObject,
    fc.array(fc.oneof({ arbitrary: ours, weight: 3 }, { arbitrary: foreign, weight: 1 }), { maxLength: 6 }),
  )
  .map(([members, sunside, features]) => ({
    ...members,
    type: 'FeatureCollection',
    sunside: { ...sunside, version: 1 },
    features: features.map((feature, i) => ({ ...feature, id: `f${i}` })),
  }));
