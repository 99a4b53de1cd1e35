import { expect, test } from 'vitest';
import { readContents } from '../../../src/survey/contents';
import { chooseSharesFrom } from '../../../src/survey/edits/choose-shares-from';
import { opened, surveyText } from '../../support/contents';

test('[S347] what shares come from is chosen and forgotten; the rest of the flow stays', () => {
  const survey = opened(surveyText([], { flow: { configurations: [{ name: 'West' }], calm: 'West' } }));
  const chosen = chooseSharesFrom(survey, 'winds');
  expect(readContents(chosen)).toMatchObject({ sharesFrom: 'winds', calm: 0 });
  expect(chooseSharesFrom(chosen, null).sunside).toEqual(survey.sunside);
});

test('[S347] a word that is none of the two is told and not used', () => {
  const contents = readContents(opened(surveyText([], { flow: { sharesFrom: 'guesses' } })));
  expect(contents.sharesFrom).toBeNull();
  expect(contents.problems.map(({ reason }) => reason).join()).toContain('flow.sharesFrom');
});
