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
import { cases } from '../../support/thorough';

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
    [['catalogue', 'airfields', 'towns'], 'one;', 'airfields.towns has 1 entries, 5 were expected'],
    [['catalogue', 'airfields', 'begins'], toDigits([2 ** 44 - 1, 0, 0, 0]), 'lat holds 94.7281'],
    [['catalogue', 'airfields', 'begins'], toDigits([2 ** 44, 0, 0, 0]), 'begins holds'],
    [['catalogue', 'airfields', 'steps', '1'], 'AB', 'the digits of begins or steps'],
    [['catalogue', 'airfields', 'elevation', '0'], 'AB CD', 'the digits of elevation'],
    [['catalogue', 'airfields', 'kinds'], toDigits([0, 0, 2, 2, 5]), 'kinds holds 5'],
    [['catalogue', 'airfields', 'kinds'], toDigits([0, 0, 2, 2, -1]), 'kinds holds -1'],
    [['catalogue', 'airfields', 'icao', 'of', '0'], 'AB', 'the codes of icao'],
    [['catalogue', 'airfields', 'local', 'signs'], 'A', 'the codes of local'],
    [['catalogue', 'airfields', 'regions', 'shapes'], '', 'the codes of regions'],
    [['catalogue', 'airfields', 'regionCounts', '0'], 7, 'regionCounts do not make 5 airfields'],
    [['catalogue', 'airfields', 'runwayCounts', '0'], -1, 'airfields.runways holds -1'],
    [['catalogue', 'airfields', 'runwayCounts', '2'], 1001, 'airfields.runways holds 1001'],
    [['catalogue', 'airfields', 'runwayCounts', '1'], 9, 'located and runways do not add up'],
    [['catalogue', 'airfields', 'runwayCounts'], [], 'airfields.runways holds'],
    [['runways', 'runways', 'fifties'], ['A'], 'the digits of length, surface or located'],
    [['runways', 'runways', 'located'], toDigits([0, 0, 0, 0, 0, 0]), 'the digits of width'],
    [['runways', 'runways', 'located'], toDigits([9, 0, 0, 0, 0, 0]), 'located holds 9'],
    [['runways', 'runways', 'surface'], toDigits([40, 0, 0, 0, 0, 0]), 'surface holds 40'],
    [['runways', 'widths'], [], 'width holds'],
    [['runways', 'ends', 'displaced', '0'], undefined, 'ends.displaced has 6 entries, 7 were expected'],
    [['runways', 'ends', 'lat', '0'], 9e9, 'ends.lat holds'],
    [['runways', 'ends', 'lng', '1'], -9e9, 'ends.lng holds'],
    [['runways', 'flags', 'runways', '0'], 77, 'flags holds 77'],
    [['runways', 'flags', 'kind'], toDigits([29, 0, 0]), 'flags holds 29'],
    [['runways', 'flags', 'kind'], ['A'], 'the digits of flags'],
    [['frequencies', 'frequencies', 'airfields', '0'], -4, 'frequencies holds -4'],
    [['frequencies', 'frequencies', 'use'], toDigits([12, 0]), 'frequencies holds 12'],
    [['frequencies', 'frequencies', 'use'], ['A'], 'the digits of use'],
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
      { seed: 77_031, numRuns: cases(1500) },
    );
  });
});
