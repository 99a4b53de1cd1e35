import { describe, expect, test } from 'vitest';
import { readArguments } from '../../src/cli/arguments';

const now = Date.parse('2026-11-25T10:00:00Z');
const value = (...args: readonly string[]) => {
  const read = readArguments(args, now);
  return read.ok ? read.value : read.reason;
};

describe('arguments of the figures command', () => {
  test('[C7] a file, and where nothing is said: now, and what the survey says', () => {
    expect(value('a.geojson')).toEqual({
      file: 'a.geojson',
      at: now,
      subject: null,
      body: null,
      wind: null,
      metar: null,
      day: null,
      settings: null,
      terrain: null,
      lenses: false,
      sweep: null,
      flown: false,
      photos: null,
      sky: null,
    });
    expect(value('--body', 'b', 'a.geojson', '--subject=s', '--terrain', 't.tif')).toMatchObject({
      file: 'a.geojson',
      at: now,
      subject: 's',
      body: 'b',
      day: null,
      terrain: 't.tif',
    });
  });

  test.each([
    ['2026-06-21T17:00:00Z', '2026-06-21T17:00:00Z'],
    ['2026-06-21T17:00Z', '2026-06-21T17:00:00Z'],
    ['2026-06-21T19:00:00+02:00', '2026-06-21T17:00:00Z'],
    ['2026-06-21T11:30:00.500-05:30', '2026-06-21T17:00:00.500Z'],
  ])('[C8] --at %s', (text, iso) => {
    expect(value('a', '--at', text)).toMatchObject({ at: Date.parse(iso) });
  });

  test.each([
    'yesterday',
    '',
    '2026-06-21',
    '2026-06-21T17:00:00',
    '2026-06-31T17:00:00Z',
    '2026-06-21T25:00:00Z',
    '1782061200000',
  ])('[C9] --at %j is refused', (text) => {
    expect(value('a', '--at', text)).toBe(`--at: expected ISO 8601 with Z or an offset, got "${text}"`);
  });

  test('[C10] no file, two files, an option without a value, an unknown option', () => {
    expect(value()).toMatch(/^a survey file is missing \(usage: /);
    expect(value('a', 'b')).toMatch(/^one survey file at a time, got 2/);
    expect(value('a', '--at')).toMatch(/--at/);
    expect(value('a', '--when', 'now')).toMatch(/--when/);
  });

  test('[F300] focal length, f-number, shutter and sky in the ways that people write them', () => {
    const settings = ['--at-focal', '400mm', '--aperture', 'f/7.1', '--shutter', '1/500', '--sky', 'hazy'];
    expect(value('a', '--lens', 'l', ...settings)).toMatchObject({
      settings: { lens: 'l', focalLength: 400, aperture: 7.1, shutter: 1 / 500 },
      sky: { word: 'hazy', direct: 0.8, visibility: null },
    });
    expect(value('a', '--lens', 'l', '--shutter', '0.002', '--aperture', '8')).toMatchObject({
      settings: { shutter: 0.002, aperture: 8, focalLength: null },
      sky: null,
    });
    expect(value('a', '--lens', 'l', '--shutter', '2 s')).toMatchObject({ settings: { shutter: 2 } });
  });

  test.each([
    ['--at-focal', '400'],
    ['--aperture', '7.1'],
    ['--shutter', '1/500'],
  ])('[C1080] %s without --lens is refused, not passed over', (option, text) => {
    expect(value('a', option, text)).toBe(
      `${option} goes with --lens only, which says the lens that it is for`,
    );
  });

  test.each([
    ['--at-focal', '0', /^--at-focal: expected a focal length above 0 mm, such as 400, got "0"$/],
    ['--at-focal', 'long', /^--at-focal: .*got "long"$/],
    ['--aperture', 'f/0', /^--aperture: expected an f-number above 0, such as 7.1, got "f\/0"$/],
    ['--aperture', '', /^--aperture: /],
    ['--shutter', '1/0', /^--shutter: expected seconds above 0, such as 1\/500 or 0.002, got "1\/0"$/],
    ['--shutter', '0', /^--shutter: /],
    ['--shutter', 'fast', /^--shutter: /],
    ['--sky', '1.2', /^--sky: expected one of/],
    ['--sky', '0.5,0', /^--sky: expected one of/],
    [
      '--sky',
      'blue',
      /^--sky: expected one of clear, hazy, overcast, heavy, or the share of .*, got "blue"$/,
    ],
  ])('[F301] %s %j is refused', (option, text, words) => {
    expect(value('a', `${option}=${text}`)).toMatch(words);
    expect(value('a', `${option}=-1`)).toMatch(new RegExp(`^${option}: `));
  });
});
