import { describe, expect, test } from 'vitest';
import { putWhenThere } from '../../src/map/put-when-there';
import { later, settle } from '../support/later';

describe('[M202] what comes over the net for the map', () => {
  test('is put on it when it is there', async () => {
    const shown: string[] = [];
    const land = later<string | null>();
    putWhenThere(land.promise, (value) => shown.push(value));
    expect(shown).toEqual([]);
    land.answer('land');
    await settle();
    expect(shown).toEqual(['land']);
  });

  test('is not put over what was chosen meanwhile, and comes back once it is wanted again', async () => {
    const shown: string[] = [];
    const land = later<string | null>();
    const away = putWhenThere(land.promise, (value) => shown.push(value));
    away();
    land.answer('land');
    await settle();
    expect(shown).toEqual([]);
    putWhenThere(land.promise, (value) => shown.push(value));
    await settle();
    expect(shown).toEqual(['land']);
  });

  test('is left out when it cannot be had', async () => {
    const shown: string[] = [];
    putWhenThere(Promise.resolve(null), (value: string) => shown.push(value));
    await settle();
    expect(shown).toEqual([]);
  });
});
