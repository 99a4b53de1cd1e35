import { describe, expect, test } from 'vitest';
import { readPreferences } from '../../../src/state/preferences.svelte';
import { starterKit } from '../../../src/survey/starter/kit';
import { starterSubjects } from '../../../src/survey/starter/subjects';
import { formatsFor } from '../../../src/ui/formats';
import { draftOf, readDraft, type Draft } from '../../../src/ui/kit-editor/draft';

const metric = formatsFor(readPreferences('{"speeds":"m/s"}'));
const feet = formatsFor(readPreferences('{"lengths":"ft","speeds":"kt"}'));
const none = new Set<string>();
const [zoom] = starterKit.lenses;
const [jet] = starterSubjects;
if (!zoom || !jet) throw new Error('expected starter lists');

const lens: Draft = {
  name: 'Long',
  shortest: '150-600 mm',
  widestAperture: 'f/6,3',
  extenders: '1.4x, 2',
};

describe('a form', () => {
  test('[L18] that nobody touched gives the entry back to the last digit, in every unit', () => {
    for (const format of [metric, feet])
      for (const subject of starterSubjects)
        expect(readDraft('subjects', draftOf('subjects', subject, format), subject, none, format)).toEqual({
          ok: true,
          entry: subject,
        });
  });

  test('reads numbers as people type them', () => {
    expect(readDraft('lenses', lens, null, none, metric)).toEqual({
      ok: true,
      entry: {
        key: 'long',
        name: 'Long',
        shortest: 150,
        longest: 600,
        widestAperture: 6.3,
        widestApertureLong: null,
        extenders: [1.4, 2],
      },
    });
  });

  test('[L22] a lens as it is engraved: one number or two, the wider end of the range first or last', () => {
    const read = (shortest: string, widestAperture: string) => {
      const reading = readDraft('lenses', { ...lens, shortest, widestAperture }, null, none, metric);
      if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
      const { entry } = reading;
      return [entry.shortest, entry.longest, entry.widestAperture, entry.widestApertureLong];
    };
    expect(read('500', '4')).toEqual([500, 500, 4, null]);
    expect(read('100–400 mm', 'f/4.5-5.6')).toEqual([100, 400, 4.5, 5.6]);
    expect(read('400 - 100', '1:4.5–5.6')).toEqual([100, 400, 4.5, 5.6]);
    expect(read('70-200', 'f/2,8')).toEqual([70, 200, 2.8, null]);
  });

  test('[L22] a lens that nobody touched stays as it is, and shows what is engraved', () => {
    const varying = { ...zoom, shortest: 100, longest: 400, widestAperture: 4.5, widestApertureLong: 5.6 };
    const draft = draftOf('lenses', varying, metric);
    expect([draft['shortest'], draft['widestAperture']]).toEqual(['100-400', '4.5-5.6']);
    expect(readDraft('lenses', draft, varying, none, metric)).toEqual({ ok: true, entry: varying });
    const prime = { ...draft, shortest: '500', widestAperture: '4' };
    expect(readDraft('lenses', prime, varying, none, metric)).toMatchObject({
      entry: { shortest: 500, longest: 500, widestAperture: 4, widestApertureLong: null },
    });
  });

  test('[L19] takes lengths and speeds in the preferred units and keeps metres and m/s', () => {
    const draft = {
      ...draftOf('subjects', jet, feet),
      length: '50',
      approachSpeed: '90',
      groundRun: '900 m',
      climbGradient: '8.5 %',
    };
    expect(readDraft('subjects', draft, jet, none, feet)).toMatchObject({
      ok: true,
      entry: { length: 15.24, approachSpeed: 46.3, groundRun: 900, climbGradient: 0.085, span: jet.span },
    });
  });

  test('an emptied field takes the value away where the entry can do without it', () => {
    const draft = { ...draftOf('subjects', jet, metric), engines: ' ', wing: '' };
    expect(readDraft('subjects', draft, jet, none, metric)).toMatchObject({
      ok: true,
      entry: { engines: null, wing: null },
    });
  });
});

describe('fields that do not fit', () => {
  const errors = (list: 'bodies' | 'lenses' | 'subjects', draft: Draft, taken = none) => {
    const reading = readDraft(list, draft, null, taken, metric);
    return reading.ok ? {} : reading.errors;
  };

  test('[L20] are all named, with the mend', () => {
    expect(errors('lenses', { ...lens, shortest: '0', widestAperture: '0', extenders: '9' })).toEqual({
      shortest: 'Focal length: "0" cannot be read. Type one number or two, such as 500 or 100-400.',
      widestAperture: 'Widest aperture: "0" cannot be read. Type one number or two, such as 4 or 4.5-5.6.',
      extenders: 'Extenders cannot be 9. Type factors from 1 to 4.',
    });
    expect(
      errors('bodies', { name: 'B', sensorWidth: '-1', sensorHeight: 'tall', pixelsWide: '6000.5' }),
    ).toEqual({
      sensorWidth: 'Sensor width cannot be -1. Type a number from 1 to 200 mm.',
      sensorHeight: 'Sensor height: "tall" is no number. Type digits, such as 400.',
      pixelsWide: 'Pixels wide cannot be 6000.5. Type a whole number of pixels.',
      pixelsHigh: 'Pixels high is missing. Type a whole number of pixels.',
    });
    expect(
      errors('subjects', {
        ...draftOf('subjects', jet, metric),
        length: '4 km',
        height: '4000',
        propulsion: '',
      }),
    ).toEqual({
      length: 'Length: "4 km" is no length. Type metres, such as 25, or feet, such as 82 ft.',
      height: 'Height cannot be 4000. Type a number from 0.2 to 50 m.',
      propulsion: 'Propulsion is missing. Choose one of jet, propeller, rotor, none.',
    });
    expect(errors('lenses', { ...lens, shortest: '100-9000' })).toEqual({
      shortest: 'Focal length cannot be 100-9000. Type a number from 1 to 5000 mm.',
    });
    expect(errors('lenses', { ...lens, shortest: '' })).toEqual({
      shortest: 'Focal length is missing. Type a number from 1 to 5000 mm.',
    });
  });

  test('[L21] a key that another entry has is refused, an empty one is made of the name', () => {
    const draft = draftOf('subjects', jet, metric);
    expect(errors('subjects', { ...draft, key: 'B738' }, new Set(['B738']))).toEqual({
      key: 'Key: another subject has "B738". Type one that is not there yet.',
    });
    const made = readDraft(
      'subjects',
      { ...draft, key: '', name: 'My Jét' },
      null,
      new Set(['my-jet']),
      metric,
    );
    expect(made).toMatchObject({ ok: true, entry: { key: 'my-jet-2' } });
    expect(readDraft('lenses', { ...lens, name: '' }, null, none, metric)).toMatchObject({
      ok: true,
      entry: { key: 'lens' },
    });
  });
});
