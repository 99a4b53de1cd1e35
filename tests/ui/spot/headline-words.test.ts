import { describe, expect, test } from 'vitest';
import { readContents } from '../../../src/survey/contents';
import { allSpotFigures } from '../../../src/figures/spot-figures';
import { pathsOf } from '../../../src/figures/traffic/paths';
import type { PathFromSpot, Sample } from '../../../src/figures/types';
import { Answers } from '../../../src/state/answers';
import { readPreferences } from '../../../src/state/preferences.svelte';
import { formatsFor } from '../../../src/ui/formats';
import { elsewhereWords, headlineWords, nothingAt } from '../../../src/ui/spot/headline-words';
import { field, instant } from '../../map/field';

const format = formatsFor(readPreferences(null));
const contents = readContents(field);
const paths = pathsOf(contents, (kind) => kind === 'arrival', null);
const [seen] = allSpotFigures(contents, paths, [instant], null)[0] ?? [];
const base = seen?.paths[0];
if (!base) throw new Error('expected a path from the first spot');

const answers = new Answers({} as never);
const sample = (aspect: number | null, total: number, more: Partial<Sample> = {}): Sample => ({
  ...base.best,
  light: 'front-lit',
  glare: false,
  flankLit: true,
  aspect,
  slantRange: 357,
  ...more,
  score: { ...base.best.score, total },
});
const path = (pass: Sample | null, best: Sample): PathFromSpot => ({ ...base, pass, best });

describe('[U950] what a card leads with', () => {
  test('the pass, although the aircraft scores higher nose-on far out: that stands second and says what it is', () => {
    const noseOn = sample(12, 0.91, { station: base.best.station + 800, slantRange: 1020 });
    const headline = answers.headline(path(sample(85, 0.74), noseOn));
    expect(headlineWords(headline, false)).toBe('side-on, front-lit; fair');
    expect(elsewhereWords(headline, format)).toBe('nose-on at 1,020 m scores higher, 0.91');
  });
  test('without a pass, right under the approach, the best leads and nothing is second', () => {
    const headline = answers.headline(path(null, sample(8, 0.63)));
    expect(headlineWords(headline, false)).toBe('from ahead, front-lit; fair');
    expect(elsewhereWords(headline, format)).toBeNull();
  });
  test('against the evening sun it says that it is not worth waiting for, and calls nothing else better that is not either', () => {
    const poor = sample(50, 0.39, { station: base.best.station + 400 });
    const headline = answers.headline(path(sample(90, 0.3, { light: 'back-lit', glare: true }), poor));
    expect(headlineWords(headline, false)).toBe('side-on, back-lit, glare; not worth waiting for');
    expect(headline.worthIt).toBe(false);
    expect(elsewhereWords(headline, format)).toBeNull();
  });
  test('what reads the same is no better', () => {
    const other = sample(40, 0.7412, { station: base.best.station + 60 });
    expect(elsewhereWords(answers.headline(path(sample(85, 0.7391), other)), format)).toBeNull();
  });
  test('under overcast no side is named, at night it stays dark', () => {
    expect(headlineWords(answers.headline(path(null, sample(85, 0.62))), true)).toBe(
      'side-on, flat light: either side; fair',
    );
    expect(headlineWords(answers.headline(path(null, sample(85, 0, { light: 'dark' }))), true)).toBe(
      'side-on, dark; not worth waiting for',
    );
  });
});

test('[U951] says at which moments nothing is worth the wait', () => {
  expect(nothingAt({ a: true, b: true })).toBeNull();
  expect(nothingAt({ a: false, b: true })).toBe('Nothing worth waiting for at A.');
  expect(nothingAt({ a: false, b: false })).toBe('Nothing worth waiting for at A or B.');
});
