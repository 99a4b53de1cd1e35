import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeCatalogue } from '../../../src/imports/catalogue/decode';
import { encodeCatalogue } from '../../../src/imports/catalogue/encode';
import { searchCatalogue } from '../../../src/imports/catalogue/search';
import { invented, source } from './airfields';

type Tree = Record<string, unknown>;
const whole = (): Tree => JSON.parse(JSON.stringify(encodeCatalogue(invented, source, 'tests'))) as Tree;

/** Every place of the file that can be broken, as a path. */
function paths(value: unknown, path: readonly string[] = []): (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, inner]) => paths(inner, [...path, key]))];
}

function broken(path: readonly string[], junk: unknown): unknown {
  if (path.length === 0) return junk;
  const file = whole();
  let holder: Tree = file;
  for (const key of path.slice(0, -1)) holder = holder[key] as Tree;
  const last = path.at(-1) ?? '';
  if (junk === undefined) {
    if (Array.isArray(holder)) holder.splice(Number(last), 1);
    else delete holder[last];
  } else holder[last] = junk;
  return file;
}

/** Either a reason, or a catalogue that answers everywhere. */
function expectUsable(json: unknown) {
  const result = decodeCatalogue(json);
  if (!result.ok) {
    expect(result.reason).toMatch(/^The airfield catalogue (does not fit|is damaged).*\.$/);
    return;
  }
  for (let i = 0; i < result.catalogue.size; i++) {
    const [lng, lat] = result.catalogue.airfieldAt(i).position;
    expect(Math.abs(lng)).toBeLessThanOrEqual(180);
    expect(Math.abs(lat)).toBeLessThanOrEqual(90);
  }
  expect(searchCatalogue(result.catalogue, 'farthing', 10).length).toBeLessThanOrEqual(10);
}

describe('a broken catalogue', () => {
  it.each([null, undefined, 7, 'text', [], {}, { type: 'FeatureCollection', features: [] }])(
    '%j is refused with a reason',
    (json) => {
      expect(decodeCatalogue(json)).toMatchObject({ ok: false });
    },
  );

  it('[C2] of another format is refused and the place is named', () => {
    expect(decodeCatalogue({ ...whole(), format: 2 })).toEqual({
      ok: false,
      reason: 'The airfield catalogue does not fit this program (at format).',
    });
  });

  it.each([
    [['airfields', 'towns'], 'one', 'airfields.towns has 1 entries, 5 were expected'],
    [['airfields', 'lat', '1'], 990_000, 'lat holds 150.4649 degrees'],
    [['airfields', 'runways', '0'], 2, 'runways and airfields do not add up'],
    [['airfields', 'runways', '0'], -1, 'airfields.runways holds -1'],
    [['runways', 'located', '1'], 0, 'ends and runways do not add up'],
    [['runways', 'located', '2'], 9, 'located holds 9'],
    [['runways', 'surface', '0'], 40, 'surface holds 40'],
    [['ends', 'lat', '0'], 9e9, 'ends.lat holds'],
    [['ends', 'lng', '1'], -9e9, 'ends.lng holds'],
    [['flags', '0'], 77, 'flags holds 77'],
    [['flags', '1'], 77, 'flags holds 77'],
    [['frequencies', '0'], -4, 'frequencies holds -4'],
    [['frequencies', '1'], 12, 'frequencies holds 12'],
  ])('[C2] damage at %j (%j) is found before anybody asks for an airfield', (path, junk, reason) => {
    const result = decodeCatalogue(broken(path, junk));
    expect(result).toMatchObject({ ok: false });
    expect(result.ok ? '' : result.reason).toContain(reason);
  });

  it('[C2] never throws, wherever it is broken and by whatever (seeded)', () => {
    const places = paths(whole());
    fc.assert(
      fc.property(
        fc.constantFrom(...places),
        fc.oneof(
          fc.constant(undefined),
          fc.jsonValue(),
          fc.integer(),
          fc.constantFrom(1e300, -1, 0.5, '\n\n', '=', '*'),
        ),
        (path, junk) => expectUsable(broken(path, junk)),
      ),
      { seed: 77_031, numRuns: 1500 },
    );
  });
});
