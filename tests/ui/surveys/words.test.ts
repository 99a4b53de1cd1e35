import { describe, expect, it } from 'vitest';
import { readPreferences } from '../../../src/state/preferences.svelte';
import { formatsFor } from '../../../src/ui/formats';
import { bytesWords, changedWords, factsWords, safetyWords } from '../../../src/ui/surveys/words';

const format = formatsFor(readPreferences('{"dates":"en-GB"}'));
const zone = 'America/New_York';
/** 21 June 2026, 09:30 in New York. */
const now = Date.UTC(2026, 5, 21, 13, 30);

describe('words of the list of surveys', () => {
  it.each([
    [Date.UTC(2026, 5, 21, 11, 5), 'today 07:05'],
    // Half past midnight there, the same day in UTC.
    [Date.UTC(2026, 5, 21, 4, 30), 'today 00:30'],
    // The evening before there, and already the 21st in UTC.
    [Date.UTC(2026, 5, 21, 3, 59), 'yesterday 23:59'],
    [Date.UTC(2026, 5, 20, 3, 59), '19 Jun 2026'],
    [Date.UTC(2025, 11, 31, 15, 0), '31 Dec 2025'],
  ])('says when it was changed: %i', (changed, words) => {
    expect(changedWords(changed, now, zone, format)).toBe(words);
  });

  it('says what is known of a survey', () => {
    expect(factsWords({ place: 'ZZ01', date: '2026-07-30', spots: 5 }, format)).toBe(
      'ZZ01 · planned for 30 Jul 2026 · 5 standing spots',
    );
    expect(factsWords({ place: '', date: null, spots: 1 }, format)).toBe('1 standing spot');
    expect(factsWords({ place: '', date: null, spots: 0 }, format)).toBe('no standing spots');
    expect(factsWords(null, format)).toBe('');
  });

  it.each([
    [0, '0 kB'],
    [340_400, '340 kB'],
    [999_499, '999 kB'],
    [999_500, '1.0 MB'],
    [9_960_000, '10 MB'],
    [1_240_000_000, '1.2 GB'],
    [11_400_000_000, '11 GB'],
  ])('writes %i bytes as %s', (bytes, words) => {
    expect(bytesWords(bytes)).toBe(words);
  });

  it('says plainly how safe the list is', () => {
    expect(safetyWords({ keeping: 'may-be-cleared', room: { used: 86_000, quota: 2e9 } })).toBe(
      'The browser may clear these surveys when space runs short: save files too. 86 kB of about 2.0 GB are in use.',
    );
    expect(safetyWords({ keeping: 'kept', room: null })).toMatch(/promised not to clear/);
    expect(safetyWords({ keeping: 'unknown', room: null })).toMatch(/save files too/);
  });
});
