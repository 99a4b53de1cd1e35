import { describe, expect, test } from 'vitest';
import { readContents } from '../../../src/survey/contents';
import type { Survey } from '../../../src/survey/document';
import { addEntry } from '../../../src/survey/edits/add-entry';
import { addKit } from '../../../src/survey/edits/add-kit';
import { changeEntry } from '../../../src/survey/edits/change-entry';
import { chooseKit } from '../../../src/survey/edits/choose-kit';
import { deleteEntry, whyEntryStays } from '../../../src/survey/edits/delete-entry';
import { deleteKit } from '../../../src/survey/edits/delete-kit';
import { duplicateEntry } from '../../../src/survey/edits/duplicate-entry';
import { importEntries } from '../../../src/survey/edits/import-entries';
import { moveEntry } from '../../../src/survey/edits/move-entry';
import { setKit } from '../../../src/survey/edits/set-kit';
import { deepFreeze } from '../../../src/survey/freeze';
import { perform, startHistory, undo } from '../../../src/survey/history';
import type { JsonObject } from '../../../src/survey/json';
import { readEntry } from '../../../src/survey/kit-lists';
import { kitInUse, otherKits } from '../../../src/survey/read-kit';
import { starterKit } from '../../../src/survey/starter/kit';
import { starterSubjects } from '../../../src/survey/starter/subjects';

const survey = (sunside: JsonObject): Survey =>
  deepFreeze({ type: 'FeatureCollection', sunside: { version: 1, ...sunside }, features: [] });

const body = {
  key: 'b',
  name: 'Old body',
  sensorWidth: 36,
  sensorHeight: 24,
  pixelsWide: 6000,
  pixelsHigh: 4000,
};
const short = {
  key: 's',
  name: 'Short',
  shortest: 24,
  longest: 70,
  widestAperture: 4,
  extenders: [],
  note: 'kept',
};
const long = { key: 'l', name: 'Long', shortest: 100, longest: 400, widestAperture: 5.6, extenders: [1.4] };
const broken = { key: 'l', name: 'Broken', shortest: 500, longest: 400, widestAperture: 5.6 };
const own = survey({
  kit: { fill: 0.7, owner: 'kept', bodies: [body], lenses: [short, broken, long] },
  current: { body: 'b', lenses: ['s', 'l'] },
});
const lensKeys = (s: Survey) => readContents(s).kit.lenses.map((lens) => lens.key);
const rawLenses = (s: Survey) => (s.sunside['kit'] as { lenses: readonly JsonObject[] }).lenses;

describe('a survey without lists of its own', () => {
  const edited = addEntry(survey({ flow: {} }), 'lenses', long);

  test('[L1] gets the whole starter kit with the first edit, and the new lens behind it', () => {
    expect(edited.sunside['kit']).toEqual({
      fill: 0.8,
      bodies: starterKit.bodies,
      lenses: [...starterKit.lenses, long],
    });
    expect(readContents(edited).problems).toEqual([]);
  });

  test('[L1] gets all starter subjects, without members that say nothing', () => {
    const changed = deleteEntry(survey({}), 'subjects', 'A320');
    const { subjects } = readContents(changed);
    expect(subjects).toEqual(starterSubjects.filter((s) => s.key !== 'A320'));
    expect(JSON.stringify(changed)).not.toContain('null');
  });

  test('keeps entries that do not fit behind the starter list', () => {
    const changed = moveEntry(survey({ kit: { lenses: [broken] } }), 'lenses', 'tele-zoom', -1);
    expect(lensKeys(changed)).toEqual(['tele-zoom', 'standard-zoom', 'long-zoom']);
    expect(rawLenses(changed).at(-1)).toBe(broken);
  });
});

describe('one entry', () => {
  test('is changed where it stands; what the program does not know stays, null takes a member away', () => {
    const changed = changeEntry(own, 'lenses', 's', { ...short, name: 'Shorter', shortest: 20 });
    expect(rawLenses(changed)[0]).toEqual({ ...short, name: 'Shorter', shortest: 20 });
    expect(rawLenses(changed).slice(1)).toEqual([broken, long]);
    const [jet] = starterSubjects;
    if (!jet) throw new Error('expected a starter subject');
    const fewer = changeEntry(survey({ subjects: [{ ...jet, rpm: 3 }] }), 'subjects', 'A320', jet);
    expect((fewer.sunside['subjects'] as JsonObject[])[0]).not.toHaveProperty('rpm');
  });

  test('[L2] takes the choice of it along when its key changes, and out when it goes', () => {
    const renamed = changeEntry(own, 'lenses', 'l', { ...long, key: 'longest' });
    expect(renamed.sunside['current']).toEqual({ body: 'b', lenses: ['s', 'longest'] });
    const gone = deleteEntry(own, 'lenses', 's');
    expect(gone.sunside['current']).toEqual({ body: 'b', lenses: ['l'] });
    expect(readContents(gone).problems.filter((p) => p.reason.includes('current'))).toEqual([]);
  });

  test('is found by key among those that fit: the broken one before it is left alone', () => {
    expect(rawLenses(deleteEntry(own, 'lenses', 'l'))).toEqual([short, broken]);
  });

  test('[L3] stays when it is the last one, since an empty list would be the starter list again', () => {
    expect(whyEntryStays(own, 'bodies')).toBe('last-of-list');
    expect(deleteEntry(own, 'bodies', 'b')).toBe(own);
    expect(whyEntryStays(own, 'lenses')).toBeNull();
  });

  test('is copied behind itself under its own key', () => {
    const copied = duplicateEntry(own, 'lenses', 's', 's-2');
    expect(lensKeys(copied)).toEqual(['s', 's-2', 'l']);
    expect(rawLenses(copied)[1]).toEqual({ ...short, key: 's-2', name: 'Short (copy)' });
  });

  test('moves past its neighbour, over what is not shown, and not off the end', () => {
    const moved = moveEntry(own, 'lenses', 's', 1);
    expect(lensKeys(moved)).toEqual(['l', 's']);
    expect(rawLenses(moved)).toContain(broken);
    expect(moveEntry(moved, 'lenses', 's', 1)).toBe(moved);
    expect(lensKeys(moveEntry(own, 'lenses', 'l', -1))).toEqual(['l', 's']);
    expect(moveEntry(own, 'lenses', 'gone', 1)).toBe(own);
  });
});

describe('entries of a table', () => {
  const table = [
    { ...long, longest: 600 },
    { ...long, key: 'new', name: 'New' },
  ];

  test('[L4] replace the same key and come to the end otherwise; twice is the same as once', () => {
    const once = importEntries(own, 'lenses', table);
    expect(lensKeys(once)).toEqual(['s', 'l', 'new']);
    expect(readContents(once).kit.lenses[1]?.longest).toBe(600);
    expect(importEntries(once, 'lenses', table)).toEqual(once);
  });

  test('change nothing when there are none', () => {
    expect(importEntries(own, 'lenses', [])).toBe(own);
  });
});

describe('kits', () => {
  const second = { name: 'Light bag', bodies: [{ ...body, key: 'c' }], lenses: [long], bag: 'kept' };
  const two = survey({ ...own.sunside, kits: [7, second] });

  test('[L5] the chosen kit and the one in use change places, choices that it does not have go', () => {
    const chosen = chooseKit(two, 1);
    expect(chosen.sunside['kit']).toBe(second);
    expect(chosen.sunside['kits']).toEqual([7, own.sunside['kit']]);
    expect(chosen.sunside['current']).toEqual({ lenses: ['l'] });
    expect(kitInUse(chosen.sunside).name).toBe('Light bag');
    expect(otherKits(chosen.sunside)).toMatchObject([{ index: 1, name: '', kit: { fill: 0.7 } }]);
    expect(chooseKit(two, 0)).toBe(two);
  });

  test('a further kit is a copy of the one in use; both have every list written out', () => {
    const added = addKit(survey({}), 'Airshow');
    expect(kitInUse(added.sunside)).toEqual({ name: 'Airshow', kit: starterKit });
    expect(otherKits(added.sunside)).toEqual([{ index: 0, name: '', kit: starterKit }]);
  });

  test('one that stands by is deleted; the last one takes the member with it', () => {
    expect(deleteKit(two, 1).sunside['kits']).toEqual([7]);
    expect(deleteKit(survey({ kits: [second] }), 0).sunside).not.toHaveProperty('kits');
    expect(deleteKit(two, 5)).toBe(two);
  });

  test('its name and fill are set beside what else it says', () => {
    const named = setKit(own, { name: 'Big bag', fill: 0.65 });
    expect(named.sunside['kit']).toMatchObject({ name: 'Big bag', fill: 0.65, owner: 'kept' });
    expect(setKit(named, { name: undefined }).sunside['kit']).not.toHaveProperty('name');
  });

  test('undo brings back every step', () => {
    const steps = [
      (s: Survey) => addKit(s, 'Other'),
      (s: Survey) => chooseKit(s, 0),
      (s: Survey) => moveEntry(s, 'lenses', 'l', -1),
      (s: Survey) => deleteKit(s, 0),
    ];
    let history = steps.reduce((h, step) => perform(h, 'step', step(h.present)), startHistory(own));
    expect(history.present).not.toEqual(own);
    for (let i = 0; i < steps.length; i++) history = undo(history);
    expect(history.present).toBe(own);
  });
});

describe('reading an entry', () => {
  const expected = (list: 'bodies' | 'lenses' | 'subjects', entry: object) => {
    const reading = readEntry(list, entry);
    return reading.ok ? [] : reading.misfits.map((m) => `${m.member}: ${m.expected}`);
  };

  test('[L6] names every member that does not fit, with what is expected', () => {
    expect(expected('lenses', { ...long, shortest: 0, widestAperture: 0, extenders: [9, 0] })).toEqual([
      'shortest: a number from 1 to 5000 mm',
      'widestAperture: a number from 0.5 to 64 (f-number)',
      'extenders: factors from 1 to 4',
    ]);
    expect(expected('bodies', { ...body, sensorWidth: -1, pixelsWide: 0.5 })).toEqual([
      'sensorWidth: a number from 1 to 200 mm',
      'pixelsWide: a whole number of pixels',
    ]);
    expect(expected('subjects', { ...starterSubjects[0], length: 4000 })).toEqual([
      'length: a number from 0.5 to 150 m',
    ]);
    expect(expected('lenses', broken)).toEqual(['longest: no less than the shortest focal length, 500 mm']);
  });
});
