import { describe, expect, test } from 'vitest';
import { readContents } from '../../../src/survey/contents';
import { chooseWindows, dropWindow, setMove } from '../../../src/survey/edits/set-plan';
import { opened, surveyText } from '../../support/contents';

const empty = opened(surveyText([]));
const window = { spot: 's1', path: 'r/09/arrival', from: '2026-06-21T14:40:00Z', to: '2026-06-21T19:05:00Z' };
const plan = (survey: typeof empty) => readContents(survey).plan;

describe('the plan in the survey', () => {
  test('[F280] a way is the same both ways and is stated once; without it the estimate counts again', () => {
    const once = setMove(empty, 'a', 'b', 12);
    expect(plan(setMove(once, 'b', 'a', 7)).moves).toEqual([{ between: ['b', 'a'], minutes: 7 }]);
    const two = setMove(once, 'a', 'c', 30);
    expect(plan(setMove(two, 'b', 'a', null)).moves).toEqual([{ between: ['a', 'c'], minutes: 30 }]);
    expect(setMove(once, 'a', 'b', null).sunside).toEqual(empty.sunside);
  });

  test('[F281] a window is taken along once and can be taken out again', () => {
    const later = { ...window, from: '2026-06-22T14:40:00Z', to: '2026-06-22T19:05:00Z' };
    const chosen = chooseWindows(chooseWindows(empty, [window]), [
      { ...window, to: '2026-06-21T19:00:00Z' },
      later,
    ]);
    expect(plan(chosen).chosen).toEqual([{ ...window, to: '2026-06-21T19:00:00Z' }, later]);
    expect(plan(dropWindow(chosen, later)).chosen).toHaveLength(1);
    expect(dropWindow(chooseWindows(empty, [window]), window).sunside).toEqual(empty.sunside);
  });

  test('[F282] what is broken in a file takes its default, is said, and stays in the file', () => {
    const broken = opened(
      surveyText([], { plan: { moves: [{ between: ['a'], minutes: 5 }], chosen: [window], extra: 1 } }),
    );
    const contents = readContents(broken);
    expect(contents.plan).toEqual({ moves: [], by: null, chosen: [window] });
    expect(contents.problems.map(({ reason }) => reason)).toEqual([
      expect.stringMatching(/^sunside\.plan\.moves/),
    ]);
    expect(dropWindow(broken, window).sunside['plan']).toEqual({
      moves: [{ between: ['a'], minutes: 5 }],
      extra: 1,
    });
  });
});
