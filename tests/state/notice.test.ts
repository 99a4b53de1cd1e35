import { expect, test } from 'vitest';
import { SurveyDocument } from '../../src/state/document.svelte';
import { View } from '../../src/state/view.svelte';
import { setSite } from '../../src/survey/edits/set-members';
import { newSurvey } from '../../src/survey/new-survey';

function desk() {
  const view = new View();
  const document = new SurveyDocument(
    { id: 'a', survey: newSurvey({ name: 'zero' }), problems: [], readOnly: false },
    () => view.surveyChanged(document.survey),
  );
  const name = (to: string) => document.perform('rename', (s) => setSite(s, { name: to }));
  return { view, document, name };
}

test('[U16] an "Undo" of a step is gone with the next step, and with that step undone by another way', () => {
  for (const next of ['rename', 'undo']) {
    const { view, document, name } = desk();
    name('one');
    const after = document.survey;
    view.offer('One thing is new.', [{ label: 'Undo', run: () => document.undo() }], {
      holds: (survey) => survey === after,
      then: null,
    });
    expect(view.noticeActions.map(({ label }) => label)).toEqual(['Undo']);
    if (next === 'rename') name('two');
    else document.undo();
    expect(view.notice).toBeNull();
    expect(view.noticeActions).toEqual([]);
    // It does not come back when its step is the last one again.
    if (next === 'rename') document.undo();
    else document.redo();
    expect(view.notice).toBeNull();
  }
});

test('[U17] other notices outlive the changes, and one that is overtaken leaves what is still to be said', () => {
  const { view, name } = desk();
  view.notice = 'Saved to a file.';
  name('one');
  expect(view.notice).toBe('Saved to a file.');
  view.offer('Name it. The zone is guessed.', [], {
    holds: ({ features }) => features.length > 0,
    then: 'The zone is guessed.',
  });
  name('two');
  expect(view.notice).toBe('The zone is guessed.');
});
