import { describe, expect, it } from 'vitest';
import { SurveyMerging } from '../../src/services/merging.svelte';
import { SurveyDocument } from '../../src/state/document.svelte';
import { View } from '../../src/state/view.svelte';
import type { StoredSurvey } from '../../src/storage/records';
import { setProperties } from '../../src/survey/edits/set-properties';
import { openSurvey } from '../../src/survey/open';
import { later } from '../support/later';
import type { Survey } from '../../src/survey/document';

interface Spot {
  readonly id: string;
  readonly name: string;
  readonly eyeHeight?: number;
  readonly lng?: number;
}
const text = (spots: readonly Spot[], site: object = { name: 'Tolverby' }) =>
  JSON.stringify({
    type: 'FeatureCollection',
    sunside: { version: 1, site },
    features: spots.map(({ id, name, eyeHeight = 1.7, lng = 18.19 }) => ({
      type: 'Feature',
      id,
      properties: { kind: 'standing-spot', name, eyeHeight },
      geometry: { type: 'Point', coordinates: [lng, 50.93] },
    })),
  });
const read = (json: string): Survey => {
  const opened = openSurvey(json);
  if (!opened.ok) throw new Error(opened.reason);
  return opened.survey;
};
const file = (json: string, name = 'friend.geojson') => new File([json], name);

const mineText = text([{ id: 's1', name: 'Orchard Path' }]);
const theirsText = text([
  { id: 's1', name: 'Orchard Path', eyeHeight: 11 },
  { id: 's2', name: 'Mound' },
]);

function setUp(kept: Readonly<Record<string, Promise<StoredSurvey | null>>> = {}) {
  const view = new View();
  const opened = { id: 'record', survey: read(mineText), problems: [], readOnly: false };
  const document = new SurveyDocument(opened, () => undefined);
  const took: StoredSurvey[] = [];
  const saving = {
    theirs: null as StoredSurvey | null,
    began: null as string | null,
    tookIn: (theirs: StoredSurvey) => void took.push(theirs),
  };
  const store = { read: (id: string) => kept[id] ?? Promise.resolve(null) };
  return {
    merging: new SurveyMerging({ document, saving, view, store }),
    document,
    view,
    saving,
    took,
    opened,
  };
}
const eyeHeights = ({ survey }: SurveyDocument) =>
  survey.features.map(({ id, properties }) => [id, properties?.['eyeHeight']]);
const inTab = (json: string, revision: number): StoredSurvey => ({
  id: 'record',
  name: 'Tolverby',
  changed: 0,
  revision,
  text: json,
});

describe('[G20] a friend’s file', () => {
  it('changes nothing before it is taken, and is one undo step then', async () => {
    const { merging, document } = setUp();
    const before = document.survey;
    await merging.withFile(file(theirsText));
    const under = merging.underWay;
    expect(under?.questions.map(({ id, pointer, mine, theirs }) => [id, pointer, mine, theirs])).toEqual([
      ['s1', '/properties/eyeHeight', 1.7, 11],
    ]);
    expect(under?.added).toEqual(['s2']);
    under?.take();
    expect(document.survey).toBe(before);
    under?.answerAll('theirs');
    under?.take();
    expect(eyeHeights(document)).toEqual([
      ['s1', 11],
      ['s2', 1.7],
    ]);
    expect(merging.underWay).toBeNull();
    document.undo();
    expect(document.survey).toBe(before);
  });

  it('“both” keeps theirs beside mine, and can be thought better of', async () => {
    const { merging, document } = setUp();
    await merging.withFile(file(theirsText));
    const under = merging.underWay;
    const [question] = under?.questions ?? [];
    if (!under || !question) throw new Error('expected a question');
    under.answer(question, 'both');
    expect([under.open, under.questions, [...under.beside.keys()]]).toEqual([0, [], ['s1']]);
    under.askAgain('s1');
    expect(under.open).toBe(1);
    under.answer(question, 'both');
    under.take();
    expect(eyeHeights(document).map(([, height]) => height)).toEqual([1.7, 11, 1.7]);
    expect(new Set(document.survey.features.map(({ id }) => id)).size).toBe(3);
  });

  it('of another field, broken, or of a newer program: said, and nothing is merged', async () => {
    const { merging, view } = setUp();
    await merging.withFile(file(text([{ id: 'x', name: 'Far', lng: 19.5 }])));
    expect([merging.underWay, view.notice]).toEqual([null, expect.stringContaining('another field, 92 km')]);
    await merging.withFile(file('{'));
    expect(view.notice).toContain('was not merged');
    await merging.withFile(file(theirsText.replace('"version":1', '"version":99')));
    expect([merging.underWay, view.notice]).toEqual([null, expect.stringContaining('newer version')]);
  });

  it('that says the same leaves nothing to undo', async () => {
    const { merging, document, view } = setUp();
    await merging.withFile(file(mineText));
    expect(merging.underWay?.anything).toBe(false);
    merging.underWay?.take();
    expect([document.undoLabel, merging.underWay]).toEqual([null, null]);
    expect(view.notice).toContain('nothing had to change');
  });
});

describe('[G21] in whichever order things happen', () => {
  it('an edit while merging: an answer about what it changed is asked again, others stand', async () => {
    const { merging, document } = setUp();
    const theirs = text([{ id: 's1', name: 'The Orchard', eyeHeight: 11 }]);
    await merging.withFile(file(theirs));
    const under = merging.underWay;
    under?.answerAll('theirs');
    expect(under?.open).toBe(0);
    document.perform('raise', (s) => setProperties(s, 's1', { eyeHeight: 4 }));
    expect(under?.questions.map(({ pointer, mine, answer }) => [pointer, mine, answer])).toEqual([
      ['/properties/name', 'Orchard Path', 'theirs'],
      ['/properties/eyeHeight', 4, null],
    ]);
    under?.take();
    expect(eyeHeights(document)).toEqual([['s1', 4]]);
  });

  it('another tab’s state is followed while merging: the merge is made with that', async () => {
    const { merging, document, opened } = setUp();
    await merging.withFile(file(theirsText));
    document.open({ ...opened, survey: read(text([{ id: 's1', name: 'Orchard Path', eyeHeight: 3 }])) });
    expect(merging.underWay?.questions.map(({ mine }) => mine)).toEqual([3]);
  });

  it('another survey is opened while merging, or while the file is read: the merge is over', async () => {
    const { merging, document, opened } = setUp();
    await merging.withFile(file(theirsText));
    const under = merging.underWay;
    under?.answerAll('theirs');
    const other = read(text([]));
    document.open({ ...opened, id: 'other', survey: other });
    expect(merging.underWay).toBeNull();
    under?.take();
    expect(document.survey).toEqual(other);
    const begun = merging.withFile(file(theirsText));
    document.open({ ...opened, id: 'third' });
    await begun;
    expect(merging.underWay).toBeNull();
  });

  it('of two files the one chosen last is merged; a broken one leaves the merge as it is', async () => {
    const slow = later<StoredSurvey | null>();
    const { merging } = setUp({ slow: slow.promise });
    const first = merging.withKept('slow');
    await merging.withFile(file(theirsText, 'last.geojson'));
    slow.answer(inTab(mineText, 1));
    await first;
    expect(merging.underWay?.from).toBe('last.geojson');
    await merging.withFile(file('{', 'broken.geojson'));
    expect(merging.underWay?.from).toBe('last.geojson');
    merging.underWay?.leave();
    expect(merging.underWay).toBeNull();
  });
});

describe('[G22] two tabs', () => {
  const base = mineText;
  const tab = text([
    { id: 's1', name: 'Orchard Path' },
    { id: 's2', name: 'Mound' },
  ]);

  it('merge with what both came from: only what both changed is asked, and the next write goes over theirs', async () => {
    const { merging, document, saving, took } = setUp();
    document.perform('raise', (s) => setProperties(s, 's1', { eyeHeight: 4 }));
    saving.theirs = inTab(tab, 5);
    saving.began = base;
    await merging.withOtherTab();
    expect([merging.underWay?.open, merging.underWay?.added]).toEqual([0, ['s2']]);
    merging.underWay?.take();
    expect(eyeHeights(document)).toEqual([
      ['s1', 4],
      ['s2', 1.7],
    ]);
    expect(took).toEqual([inTab(tab, 5)]);
  });

  it('settled otherwise while merging, the merge is over', async () => {
    const { merging, saving } = setUp();
    saving.theirs = inTab(tab, 5);
    saving.began = base;
    await merging.withOtherTab();
    expect(merging.underWay).not.toBeNull();
    saving.theirs = null;
    expect(merging.underWay).toBeNull();
  });
});
