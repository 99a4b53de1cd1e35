import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeCatalogue } from '../../../src/imports/catalogue/decode';
import { decodeFrequencies } from '../../../src/imports/catalogue/decode-frequencies';
import { decodeRunways } from '../../../src/imports/catalogue/decode-runways';
import { toDigits } from '../../../src/imports/catalogue/digits';
import { encodeCatalogue } from '../../../src/imports/catalogue/encode';
import { searchCatalogue } from '../../../src/imports/catalogue/search';
import type { Position } from '../../../src/survey/document';
import { decoded, invented, source } from './airfields';

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

/** The three files as their readers get them; runways and frequencies with the catalogue that they go with. */
function read(json: unknown) {
  const files = (typeof json === 'object' && json !== null ? json : {}) as Tree;
  const { catalogue } = decoded(invented);
  return {
    catalogue: decodeCatalogue(files['catalogue']),
    runways: decodeRunways(files['runways'], catalogue),
    frequencies: decodeFrequencies(files['frequencies'], catalogue),
  };
}

const reasonsOf = (json: unknown) =>
  Object.values(read(json)).flatMap((result) => (result.ok ? [] : [result.reason]));

const within = ([lng, lat]: Position) => Math.abs(lng) <= 180 && Math.abs(lat) <= 90;

/** Either a reason, or a catalogue that answers everywhere. */
function expectUsable(json: unknown) {
  for (const reason of reasonsOf(json))
    expect(reason).toMatch(
      /^The (airfield catalogue|list of runways|list of frequencies) (does not fit|is damaged).*\.$/,
    );
  const { catalogue, runways, frequencies } = read(json);
  for (let i = 0; i < invented.length; i++) {
    if (runways.ok)
      for (const { ends } of runways.value(i))
        expect(ends.every((end) => end === null || within(end.position))).toBe(true);
    if (frequencies.ok) expect(frequencies.value(i).every(({ mhz }) => Number.isFinite(mhz))).toBe(true);
  }
  if (!catalogue.ok) return;
  for (let i = 0; i < catalogue.value.size; i++)
    expect(within(catalogue.value.airfieldAt(i).position)).toBe(true);
  expect(searchCatalogue(catalogue.value, 'farthing', 10).length).toBeLessThanOrEqual(10);
}

describe('a broken catalogue', () => {
  it.each([null, undefined, 7, 'text', [], {}, { type: 'FeatureCollection', features: [] }])(
    '%j is refused with a reason',
    (json) => {
      expect(decodeCatalogue(json)).toMatchObject({ ok: false });
      const { catalogue } = decoded(invented);
      expect(decodeRunways(json, catalogue)).toMatchObject({ ok: false });
      expect(decodeFrequencies(json, catalogue)).toMatchObject({ ok: false });
    },
  );

  it('[C2] of another format is refused and the place is named', () => {
    expect(reasonsOf(broken(['catalogue', 'format'], 1))).toEqual([
      'The airfield catalogue does not fit this program (at format).',
    ]);
  });

  it.each([
    ['runways', 'The list of runways'],
    ['frequencies', 'The list of frequencies'],
  ])('[C12] %s of another build are refused: they would be those of other airfields', (name, what) => {
    expect(reasonsOf(broken([name, 'builtBy'], 'another'))).toEqual([
      `${what} is damaged: it belongs to another version; load the page again.`,
    ]);
  });

  it.each([
    [['catalogue', 'airfields', 'towns'], 'one', 'airfields.towns has 1 entries, 5 were expected'],
    [['catalogue', 'airfields', 'lat'], toDigits([990_000, 0, 0, 0, 0]), 'lat holds 99 degrees'],
    [['catalogue', 'airfields', 'lat', '1'], 'AB', 'the digits of lat, lng or elevation'],
    [['catalogue', 'airfields', 'lng', '0'], 'AB CD', 'the digits of lat, lng or elevation'],
    [['catalogue', 'airfields', 'runways', '0'], -1, 'airfields.runways holds -1'],
    [['catalogue', 'airfields', 'located', '0'], 2, 'located and runways do not add up'],
    [['runways', 'runways', 'length'], [1], 'runways.width has 6 entries, 1 were expected'],
    [['runways', 'runways', 'located', '1'], 0, 'ends and runways do not add up'],
    [['runways', 'runways', 'located', '2'], 9, 'located holds 9'],
    [['runways', 'runways', 'surface', '0'], 40, 'surface holds 40'],
    [['runways', 'ends', 'lat', '0'], 9e9, 'ends.lat holds'],
    [['runways', 'ends', 'lng', '1'], -9e9, 'ends.lng holds'],
    [['runways', 'flags', '0'], 77, 'flags holds 77'],
    [['runways', 'flags', '1'], 77, 'flags holds 77'],
    [['frequencies', 'frequencies', '0'], -4, 'frequencies holds -4'],
    [['frequencies', 'frequencies', '1'], 12, 'frequencies holds 12'],
  ])('[C2] damage at %j (%j) is found before anybody asks for an airfield', (path, junk, reason) => {
    const reasons = reasonsOf(broken(path, junk));
    expect(reasons).toHaveLength(1);
    expect(reasons[0]).toContain(reason);
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
