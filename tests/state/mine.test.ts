import { describe, expect, test } from 'vitest';
import { Mine } from '../../src/state/mine.svelte';
import type { JsonObject } from '../../src/survey/json';
import { addEntry } from '../../src/survey/edits/add-entry';
import { setCurrent } from '../../src/survey/edits/set-members';
import { takeKit } from '../../src/survey/edits/take-kit';
import type { Survey } from '../../src/survey/document';
import { newSurvey } from '../../src/survey/new-survey';
import { kitInUse, otherKits } from '../../src/survey/read-kit';

function store(kept: string | null = null) {
  let text = kept;
  return { read: () => text, write: (t: string) => ((text = t), true) };
}
const lens = (key: string) => ({
  key,
  name: key,
  shortest: 500,
  longest: 500,
  widestAperture: 4,
  extenders: [1.4],
});
const field = newSurvey({ name: 'Field' });
const withLens = (survey: Survey, key: string) => addEntry(survey, 'lenses', lens(key));
const lensKeys = ({ sunside }: Survey) => kitInUse(sunside).kit.lenses.map(({ key }) => key);

/** A device on which a lens was added in one survey. */
function equipped() {
  const kept = store();
  const mine = new Mine(kept);
  mine.follow('one', field);
  mine.follow('one', withLens(field, 'long'));
  return { kept, mine };
}

describe('[S80] what is mine travels', () => {
  test('a new device starts a survey with nothing of its own', () => {
    const mine = new Mine(store());
    expect(mine.startWith(field)).toBe(field);
    expect(mine.differsFrom(field)).toBe(false);
  });

  test('the kit that was edited in one survey is that of the next new one, also after a restart', () => {
    const { kept, mine } = equipped();
    expect(lensKeys(mine.startWith(field))).toContain('long');
    expect(lensKeys(new Mine(kept).startWith(field))).toContain('long');
  });

  test('a survey that brings its own keeps it, editing it is no edit of mine, and the swap loses nothing', () => {
    const { mine } = equipped();
    const theirs = withLens(field, 'theirs');
    expect(lensKeys(mine.startWith(theirs))).not.toContain('long');
    mine.follow('friend', theirs);
    mine.follow('friend', withLens(theirs, 'another'));
    expect(lensKeys(mine.startWith(field))).not.toContain('another');
    expect(mine.differsFrom(theirs)).toBe(true);
    const kit = mine.kit as JsonObject;
    const swapped = takeKit(theirs, kit);
    expect(lensKeys(swapped)).toContain('long');
    expect(mine.differsFrom(swapped)).toBe(false);
    expect(otherKits(swapped.sunside).map(({ kit: k }) => k.lenses.at(-1)?.key)).toEqual(['theirs']);
    // There and back again leaves one of each.
    expect(
      otherKits(takeKit(takeKit(swapped, theirs.sunside['kit'] as JsonObject), kit).sunside),
    ).toHaveLength(1);
  });

  test('the starter kit is nobody’s: it does not stand by after the swap', () => {
    const { mine } = equipped();
    expect(mine.differsFrom(field)).toBe(true);
    const swapped = takeKit(field, mine.kit as JsonObject);
    expect(lensKeys(swapped)).toContain('long');
    expect(swapped.sunside['kits']).toBeUndefined();
  });

  test('after the swap it follows the edits again; an undone first edit is undone here too', () => {
    const { mine } = equipped();
    const swapped = takeKit(withLens(field, 'theirs'), mine.kit as JsonObject);
    mine.follow('friend', swapped);
    mine.follow('friend', withLens(swapped, 'newest'));
    expect(lensKeys(mine.startWith(field))).toContain('newest');
    const { mine: other } = equipped();
    other.follow('one', field);
    expect(other.kit).toBeNull();
  });

  test('the last choice goes along where the new survey has what was chosen', () => {
    const { mine } = equipped();
    const mineNow = withLens(field, 'long');
    mine.follow('one', setCurrent(mineNow, { subject: 'C172', body: 'nowhere' }));
    expect(mine.startWith(field).sunside['current']).toEqual({ subject: 'C172' });
    const stated = setCurrent(field, { subject: 'B738' });
    expect(mine.startWith(stated).sunside['current']).toEqual({ subject: 'B738' });
  });

  test('another survey opened is no edit; what is damaged counts as nothing', () => {
    const { mine } = equipped();
    mine.follow('two', withLens(field, 'two'));
    expect(lensKeys(mine.startWith(field))).not.toContain('two');
    for (const text of ['', '{', '[]', '{"kit":3,"subjects":{},"current":"x"}'])
      expect(new Mine(store(text)).startWith(field)).toBe(field);
  });
});
