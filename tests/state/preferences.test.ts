import { describe, expect, test } from 'vitest';
import { Preferences, readPreferences } from '../../src/state/preferences.svelte';

const defaults = {
  lengths: 'm',
  speeds: 'kt',
  bearings: 'three-digits',
  coordinates: 'decimal',
  clock: '24h',
  dates: 'en-GB',
  look: 'system',
  rings: 'headline',
  keys: 'on',
};

function store(kept: string | null, refuses = false) {
  const written: string[] = [];
  return {
    written,
    read: () => written.at(-1) ?? kept,
    write: (text: string) => {
      if (!refuses) written.push(text);
      return !refuses;
    },
  };
}

describe('preferences', () => {
  test('are the defaults where nothing is kept', () => {
    expect(new Preferences(store(null)).values).toEqual(defaults);
  });

  test('[L7] are there again the next time, one set and the others as they were', () => {
    const device = store(JSON.stringify({ speeds: 'km/h', clock: '12h' }));
    new Preferences(device).set({ look: 'night' });
    expect(new Preferences(device).values).toEqual({
      ...defaults,
      speeds: 'km/h',
      clock: '12h',
      look: 'night',
    });
  });

  test('[L8] hold although the device refuses to keep them, and say so', () => {
    const device = store(null, true);
    const preferences = new Preferences(device);
    expect(preferences.kept).toBe(true);
    preferences.set({ lengths: 'ft' });
    expect(preferences.values).toEqual({ ...defaults, lengths: 'ft' });
    expect(preferences.kept).toBe(false);
  });

  test.each([
    ['no JSON', '{"lengths":'],
    ['no object', '["ft"]'],
    ['null', 'null'],
    ['strange values', '{"lengths":"furlong","speeds":7,"look":null}'],
  ])('[L9] %s gives the defaults', (_what, text) => {
    expect(readPreferences(text)).toEqual(defaults);
  });

  test('a bad value does not spoil its neighbours, an unknown one is left out', () => {
    expect(readPreferences('{"lengths":"furlong","speeds":"m/s","colour":"red"}')).toEqual({
      ...defaults,
      speeds: 'm/s',
    });
  });
});
