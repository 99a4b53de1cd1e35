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
    });
    expect(value('--body', 'b', 'a.geojson', '--subject=s')).toMatchObject({
      file: 'a.geojson',
      at: now,
      subject: 's',
      body: 'b',
      day: null,
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
});
