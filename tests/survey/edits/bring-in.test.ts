import { describe, expect, it } from 'vitest';
import { bySource, standingOf, type Incoming } from '../../../src/survey/brought-in';
import { readContents } from '../../../src/survey/contents';
import type { Survey } from '../../../src/survey/document';
import { addFeature } from '../../../src/survey/edits/add-feature';
import { bringIn } from '../../../src/survey/edits/bring-in';
import { deleteFeature } from '../../../src/survey/edits/delete-feature';
import { reshapeFeature } from '../../../src/survey/edits/reshape-feature';
import { setProperties } from '../../../src/survey/edits/set-properties';
import { deepFreeze } from '../../../src/survey/freeze';
import { newSurvey } from '../../../src/survey/new-survey';
import { openSurvey } from '../../../src/survey/open';
import { saveSurvey } from '../../../src/survey/save';
import { sourceMarks, sourceTexts } from '../../../src/survey/sources';

const hangar = (height = 12, more = {}): Incoming => ({
  source: 'osm way/10',
  kind: 'obstacle',
  shape: {
    type: 'Polygon',
    coordinates: [
      [
        [18.1788445, 50.9357528],
        [18.1797004, 50.9357528],
        [18.1797004, 50.9361123],
        [18.1788445, 50.9357528],
      ],
    ],
  },
  properties: { name: 'Hangar', height, heightFrom: 'map', sight: 'solid', ...more },
});
const road: Incoming = {
  source: 'osm way/40',
  kind: 'ground-use',
  shape: {
    type: 'LineString',
    coordinates: [
      [18.16, 50.92],
      [18.19, 50.921],
    ],
  },
  properties: { use: 'road', name: 'Airport Road', access: 'unknown' },
};
const credits = [{ text: 'Map data © OpenStreetMap contributors.', mark: '© OpenStreetMap contributors' }];
const empty = deepFreeze(newSurvey({ name: 'Field', reference: [18.1734, 50.9287] }));
const brought = (survey: Survey, ...features: Incoming[]) =>
  deepFreeze(bringIn(survey, { features, credits }));
const featureOf = (survey: Survey, source: string) => {
  const found = bySource(survey.features).get(source);
  if (!found) throw new Error(`expected a feature from ${source}`);
  return found;
};
/** As it is after it has been saved and opened again. */
const reopened = (survey: Survey): Survey => {
  const opened = openSurvey(saveSurvey(survey));
  if (!opened.ok) throw new Error(opened.reason);
  expect(opened.problems).toEqual([]);
  return deepFreeze(opened.survey);
};

describe('bringing in what others have mapped', () => {
  it('[I20] adds features of our kinds, with where they came from, and the credit once', () => {
    const survey = brought(brought(empty, hangar()), road);
    const contents = readContents(survey);
    expect(contents.problems).toEqual([]);
    expect(contents.obstacles.map((o) => [o.name, o.height])).toEqual([['Hangar', 12]]);
    expect(contents.groundUses.map((g) => [g.use, g.name, g.access])).toEqual([
      ['road', 'Airport Road', 'unknown'],
    ]);
    expect(sourceMarks(survey)).toEqual(['© OpenStreetMap contributors']);
    expect(survey.sunside['sources']).toHaveLength(1);
    expect(sourceMarks(reopened(survey))).toEqual(['© OpenStreetMap contributors']);
  });

  it('[S1022] credits in full have a mark as well that stands in no text', () => {
    const sources = [
      { text: 'Map data © A.', mark: '© A' },
      { text: 'Plan by B.', mark: 'Plan B' },
      { mark: '© C' },
    ];
    expect(sourceTexts({ sunside: { sources } })).toEqual(['Map data © A.', 'Plan by B.', 'Plan B', '© C']);
  });

  it('[I21] doubles nothing when it comes a second time, also after saving and opening', () => {
    const once = reopened(brought(empty, hangar(), road));
    expect(standingOf(hangar(), featureOf(once, 'osm way/10'))).toBe('same');
    expect(brought(once, hangar(), road)).toBe(once);
  });

  it('[I22] follows the source where the user has changed nothing, and keeps what the user has changed', () => {
    const once = brought(empty, hangar(), road);
    const { id } = featureOf(once, 'osm way/10');
    const edited = deepFreeze(setProperties(once, id, { name: 'My hangar', notes: 'repainted' }));
    const again = brought(edited, hangar(15, { roof: 'flat' }));
    expect(standingOf(hangar(15), featureOf(edited, 'osm way/10'))).toBe('changed');
    expect(again.features).toHaveLength(2);
    expect(featureOf(again, 'osm way/10').id).toBe(id);
    expect(featureOf(again, 'osm way/10').properties).toMatchObject({
      name: 'My hangar',
      notes: 'repainted',
      height: 15,
      roof: 'flat',
    });
    // What the source takes back goes, the user's own word stays.
    const { heightFrom: _gone, ...fewer } = hangar(15).properties;
    const third = brought(again, { ...hangar(15), properties: fewer });
    expect(featureOf(third, 'osm way/10').properties).not.toHaveProperty('heightFrom');
    expect(featureOf(third, 'osm way/10').properties).toMatchObject({
      name: 'My hangar',
      notes: 'repainted',
    });
  });

  it('[I23] keeps a shape that the user has moved, and a member that the user has taken away', () => {
    const once = brought(empty, hangar());
    const { id } = featureOf(once, 'osm way/10');
    const moved = reshapeFeature(once, id, {
      type: 'Polygon',
      coordinates: [
        [
          [18.17, 50.93],
          [18.18, 50.93],
          [18.18, 50.94],
          [18.17, 50.93],
        ],
      ],
    });
    const emptied = setProperties(moved, id, { name: undefined });
    const again = brought(emptied, hangar(15));
    expect(featureOf(again, 'osm way/10').geometry).toEqual(featureOf(moved, 'osm way/10').geometry);
    expect(featureOf(again, 'osm way/10').properties).not.toHaveProperty('name');
    expect(featureOf(again, 'osm way/10').properties?.['height']).toBe(15);
  });

  it('[I24] leaves everything else as it is: other features, their order, members of the file', () => {
    const drawn = addFeature(empty, 'mine', 'obstacle', hangar().shape, { height: 3 });
    const survey = brought({ ...drawn, extra: { a: 1 } }, hangar());
    expect(survey.features[0]).toBe(drawn.features[0]);
    expect(survey['extra']).toEqual({ a: 1 });
    expect(new Set(survey.features.map((f) => f.id)).size).toBe(2);
    const without = deleteFeature(survey, featureOf(survey, 'osm way/10').id);
    expect(brought(without, hangar()).features).toHaveLength(2);
  });

  it('[I25] takes one of two features with one source', () => {
    const survey = brought(empty, hangar(), hangar(99));
    expect(survey.features).toHaveLength(1);
    expect(survey.features[0]?.properties?.['height']).toBe(12);
  });

  it('[I26] says where a survey is that did not say so', () => {
    const survey = bringIn(newSurvey({ name: 'Nowhere' }), {
      features: [road],
      credits,
      site: { reference: [18.17, 50.93] },
    });
    expect(readContents(survey).site.reference).toEqual([18.17, 50.93]);
    expect(readContents(survey).site.name).toBe('Nowhere');
  });
});
