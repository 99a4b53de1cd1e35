import { describe, expect, it } from 'vitest';
import { importSurveys, importWords } from '../../src/keeping/import-surveys';
import type { Written } from '../../src/storage/autosave';
import type { StoredSurvey, SurveySummary, SurveyToKeep } from '../../src/storage/records';

const textOf = (name: string) =>
  JSON.stringify({ type: 'FeatureCollection', sunside: { version: 1, site: { name } }, features: [] });

/** What was written, beside one survey that was kept before. */
function setUp(before: string, room = Infinity) {
  const kept: StoredSurvey = { id: 'old', name: 'Old', changed: 1, revision: 1, text: before };
  const { text, ...rest } = kept;
  const summary: SurveySummary = { ...rest, size: text.length, facts: null, deleted: null };
  const written: SurveyToKeep[] = [];
  const write = (survey: SurveyToKeep): Promise<Written> => {
    if (written.length >= room) return Promise.resolve({ ok: false, why: 'refused', reason: 'no room' });
    written.push(survey);
    return Promise.resolve({ ok: true, revision: 1 });
  };
  let ids = 0;
  const needs = {
    store: { write, read: () => Promise.resolve(kept) },
    shelf: { list: () => Promise.resolve({ ok: true as const, value: [summary] }) },
    newId: () => `id${++ids}`,
    now: () => 77,
  };
  return { written, needs };
}

describe('importing surveys', () => {
  it('keeps the text as it came, under the name that it gives itself, else that of the file', async () => {
    const { written, needs } = setUp('');
    const text = `${textOf('Bank')}\n\n`;
    const nameless = textOf('');
    const files = [new File([`\uFEFF${text}`], 'x.geojson'), new File([nameless], 'No name inside.json')];
    expect(await importSurveys(files, needs)).toEqual({
      added: ['Bank', 'No name inside'],
      known: 0,
      refused: [],
    });
    expect(written).toEqual([
      { id: 'id1', name: 'Bank', changed: 77, text, facts: { place: '', date: null, spots: 0, at: null } },
      {
        id: 'id2',
        name: 'No name inside',
        changed: 77,
        text: nameless,
        facts: { place: '', date: null, spots: 0, at: null },
      },
    ]);
  });

  it('does not keep twice what is there letter by letter, but what differs by one', async () => {
    const { written, needs } = setUp(textOf('Bank'));
    const files = [new File([textOf('Bank')], 'a.geojson'), new File([textOf('Bans')], 'b.geojson')];
    expect(await importSurveys(files, needs)).toEqual({ added: ['Bans'], known: 1, refused: [] });
    expect(written).toHaveLength(1);
  });

  it('goes on behind a file that cannot be read, and says where room ran out', async () => {
    const { needs } = setUp('', 1);
    const gone = new File([''], 'gone.geojson');
    gone.arrayBuffer = () => Promise.reject(new Error('it has gone'));
    const files = [gone, new File([textOf('In')], 'in.geojson'), new File([textOf('Out')], 'out.geojson')];
    expect(await importSurveys(files, needs)).toEqual({
      added: ['In'],
      known: 0,
      refused: ['gone.geojson: it has gone', 'out.geojson: no room'],
    });
  });

  it('names the first three that were refused', () => {
    const refused = ['a: no.', 'b: no.', 'c: no.', 'd: no.', 'e: no.'];
    expect(importWords({ added: ['Bank'], known: 1, refused })).toBe(
      '"Bank" is in the list now. 1 was there already. Not imported: a: no. b: no. c: no. And 2 more.',
    );
  });
});
