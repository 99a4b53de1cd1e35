import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Part } from '../../../src/exports/pass-on/parts';
import { parts } from '../../../src/exports/pass-on/parts';
import { passOn } from '../../../src/exports/pass-on/pass-on';
import type { Survey } from '../../../src/survey/document';
import { openSurvey } from '../../../src/survey/open';

const opened = (text: string): Survey => {
  const read = openSurvey(text);
  if (!read.ok) throw new Error(read.reason);
  return read.survey;
};

const sources = [{ text: 'Land data of the county', licence: 'ODbL', madeUp: { kept: true } }];
const secret = (what: string) => `secret ${what}`;
const full = opened(
  JSON.stringify({
    type: 'FeatureCollection',
    sunside: {
      version: 1,
      site: { name: 'Tolverby', elevation: 186, doorCode: secret('unknown') },
      rules: {
        photography: 'ask',
        office: secret('contacts'),
        phone: secret('contacts'),
        email: secret('contacts'),
        notes: secret('notes'),
      },
      plan: { moves: [{ between: ['a', 'b'], minutes: 4 }], mine: secret('plan') },
      movements: [{ id: 'm', time: '12:00', use: 'arrival', flight: secret('movements') }],
      sources,
      diary: secret('unknown'),
    },
    shelf: secret('unknown'),
    features: [
      {
        type: 'Feature',
        id: 'a',
        properties: {
          kind: 'standing-spot',
          name: 'Pallin Farm',
          notes: secret('notes'),
          mood: secret('unknown'),
          access: {
            status: 'ask',
            hours: 'not while hay is made',
            contact: secret('contacts'),
            permission: { askedOn: '2026-05-01', by: secret('permissions') },
          },
        },
        geometry: { type: 'Point', coordinates: [18.17, 50.93] },
      },
      {
        type: 'Feature',
        id: 'b',
        properties: { kind: 'no-go', name: 'Paddock', reason: 'a bull' },
        geometry: { type: 'Polygon', coordinates: [[[18, 50], [18.1, 50], [18.1, 50.1], [18, 50]]] }, // prettier-ignore
      },
      {
        type: 'Feature',
        id: 'c',
        properties: { kind: 'log-entry', name: secret('log') },
        geometry: { type: 'Point', coordinates: [18.17, 50.93] },
      },
      {
        type: 'Feature',
        id: 'd',
        properties: { kind: 'picnic', name: secret('unknown') },
        geometry: { type: 'Point', coordinates: [18.17, 50.93] },
      },
    ],
  }),
);
const textWith = (...ticked: readonly Part[]) => JSON.stringify(passOn(full, new Set(ticked)).survey);

describe('passing a survey on', () => {
  it('[E40] leaves every private part out unless it is ticked, and only that part comes with its tick', () => {
    expect(textWith()).not.toContain('secret');
    for (const part of parts) {
      const there = new Set(textWith(part).match(/secret \w+/g));
      expect([...there]).toEqual([`secret ${part}`]);
    }
  });

  it('[E41] with every tick it is the same survey', () => {
    expect(passOn(full, new Set(parts)).survey).toEqual(full);
  });

  it('[E42] names each thing that it leaves out, ticked or not', () => {
    const { found } = passOn(full, new Set());
    expect(found).toContainEqual({ part: 'contacts', id: 'a', member: 'contact' });
    expect(found).toContainEqual({ part: 'unknown', id: 'd', member: '' });
    expect(found).toContainEqual({ part: 'unknown', id: null, member: 'shelf' });
    // One for each secret, and one for the whole permission and plan.
    expect(found).toHaveLength((JSON.stringify(full).match(/secret/g) ?? []).length);
    expect(passOn(full, new Set(parts)).found).toEqual(found);
  });

  it('[E43] the credits survive as they are, members that nobody knows included', () => {
    expect(passOn(full, new Set()).survey.sunside['sources']).toEqual(sources);
  });

  it('[E44] judgement: whom to ask stays at home, but that one must ask, and when, goes along', () => {
    const spot = passOn(full, new Set()).survey.features.find(({ id }) => id === 'a');
    expect(spot?.properties?.['access']).toEqual({ status: 'ask', hours: 'not while hay is made' });
  });

  it('[E45] judgement: why an area is closed is no note but a warning, and goes along', () => {
    const area = passOn(full, new Set()).survey.features.find(({ id }) => id === 'b');
    expect(area?.properties).toEqual({ kind: 'no-go', name: 'Paddock', reason: 'a bull' });
  });

  it('[E46] judgement: an empty note is nothing to ask about', () => {
    const survey = opened(
      JSON.stringify({
        type: 'FeatureCollection',
        sunside: { version: 1, rules: { notes: '', phone: null }, plan: { moves: [], chosen: [] } },
        features: [],
      }),
    );
    expect(passOn(survey, new Set()).found).toEqual([]);
  });

  it('[E47] knows every member of the sample site', () => {
    const sample = opened(readFileSync('sample-sites/tolverby.geojson', 'utf8'));
    const { found, survey } = passOn(sample, new Set());
    expect(found.filter(({ part }) => part === 'unknown')).toEqual([]);
    expect(survey.features).toHaveLength(sample.features.length);
  });

  it('[E48] members named like those of every object are unknown like others', () => {
    const survey = opened(
      '{"type":"FeatureCollection","sunside":{"version":1,"constructor":"x","toString":"y"},"features":[]}',
    );
    expect(passOn(survey, new Set()).survey.sunside).toEqual({ version: 1 });
  });
});
