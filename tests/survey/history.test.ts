import { describe, expect, test } from 'vitest';
import type { Survey } from '../../src/survey/document';
import { setSite } from '../../src/survey/edits/set-members';
import { mostSteps, perform, pop, redo, replace, startHistory, undo } from '../../src/survey/history';
import { newSurvey } from '../../src/survey/new-survey';

const first = newSurvey({ name: 'zero' });
const named = (name: string): Survey => setSite(first, { name });
const [one, two, three] = [named('one'), named('two'), named('three')];
const begun = startHistory(first);

describe('history', () => {
  test('[S40] undo and redo go through the surveys one by one, with what the user did', () => {
    const history = perform(perform(begun, 'first', one), 'second', two);
    expect(history.past.map((s) => s.label)).toEqual(['first', 'second']);
    const back = undo(history);
    expect(back.present).toBe(one);
    expect(back.future[0]?.label).toBe('second');
    expect(undo(back).present).toBe(first);
    expect(redo(redo(undo(back)))).toMatchObject({ present: two, future: [] });
    expect(redo(redo(undo(back))).past.map((s) => [s.survey, s.label])).toEqual([
      [first, 'first'],
      [one, 'second'],
    ]);
  });

  test('[S41] at the ends nothing happens', () => {
    expect(undo(begun)).toBe(begun);
    expect(redo(begun)).toBe(begun);
    expect(pop(begun)).toBe(begun);
  });

  test('[S42] an edit that changes nothing is no step', () => {
    expect(perform(begun, 'nothing', first)).toBe(begun);
  });

  test('[S43] a drag is one step, however often the survey changes under the pointer', () => {
    const drag = replace(replace(perform(begun, 'move', one), two), three);
    expect(drag.past).toHaveLength(1);
    expect(drag.present).toBe(three);
    expect(undo(drag).present).toBe(first);
    expect(redo(undo(drag)).present).toBe(three);
  });

  test('[S44] a new step forgets what could be redone', () => {
    const history = perform(undo(perform(begun, 'first', one)), 'other', two);
    expect(history.future).toEqual([]);
    expect(redo(history)).toBe(history);
  });

  test('[S45] a cancelled drag leaves no step and gives back what could be redone', () => {
    const before = undo(perform(perform(begun, 'first', one), 'second', two));
    const after = pop(replace(perform(before, 'move', three), named('elsewhere')));
    expect(after.present).toBe(one);
    expect(after.past).toEqual(before.past);
    expect(after.future).toEqual(before.future);
    expect(redo(after).present).toBe(two);
  });

  test('[S46] 500 steps are kept, the oldest go first', () => {
    let history = begun;
    for (let i = 1; i <= mostSteps + 7; i++) history = perform(history, `step ${i}`, named(String(i)));
    expect(mostSteps).toBe(500);
    expect(history.past).toHaveLength(500);
    expect(history.past[0]?.label).toBe('step 8');
    let back = history;
    for (let i = 0; i < 600; i++) back = undo(back);
    expect(back.present.sunside['site']).toEqual({ name: '7' });
    expect(back.future).toHaveLength(500);
    for (let i = 0; i < 600; i++) back = redo(back);
    expect(back.present).toBe(history.present);
  });
});
