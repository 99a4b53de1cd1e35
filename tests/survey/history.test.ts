import { describe, expect, test } from 'vitest';
import { readContents } from '../../src/survey/contents';
import type { Survey } from '../../src/survey/document';
import { setCurrent, setSite } from '../../src/survey/edits/set-members';
import { addEntry } from '../../src/survey/edits/add-entry';
import { changeEntry } from '../../src/survey/edits/change-entry';
import { deleteEntry } from '../../src/survey/edits/delete-entry';
import {
  type History,
  mostSteps,
  perform,
  pop,
  redo,
  replace,
  startHistory,
  undo,
} from '../../src/survey/history';
import { newSurvey } from '../../src/survey/new-survey';
import { starterSubjects } from '../../src/survey/starter/subjects';

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

describe('what is chosen is carried through undo and redo', () => {
  const starter = starterSubjects[0];
  if (!starter) throw new Error('expected subjects in the starter list');
  const keyed = (key: string) => ({ ...starter, key, name: key });
  const withSubjects = ['A', 'B', 'C'].reduce((s, key) => addEntry(s, 'subjects', keyed(key)), newSurvey({}));
  const chosen = (survey: Survey) => readContents(survey).subject.key;
  const choose = (history: History, subject: string) =>
    replace(history, setCurrent(history.present, { subject }));
  const rename = (history: History, name: string) =>
    perform(history, `call it ${name}`, setSite(history.present, { name }));
  const atA = startHistory(setCurrent(withSubjects, { subject: 'A' }));

  test('[S200] undo never changes the aircraft, however many steps lie before the choice', () => {
    const history = choose(rename(rename(atA, 'one'), 'two'), 'B');
    expect(chosen(undo(history).present)).toBe('B');
    expect(undo(history).present.sunside['site']).toEqual({ name: 'one' });
    expect(chosen(undo(undo(history)).present)).toBe('B');
  });

  test('[S201] redo never discards a choice made since the undo', () => {
    const back = choose(undo(choose(rename(atA, 'one'), 'B')), 'C');
    const again = redo(back);
    expect(again.present.sunside['site']).toEqual({ name: 'one' });
    expect(chosen(again.present)).toBe('C');
    expect(chosen(undo(again).present)).toBe('C');
  });

  test('[S202] a step that renames the chosen subject takes the choice along, back and forth', () => {
    const renamed = perform(atA, 'rename A', changeEntry(atA.present, 'subjects', 'A', keyed('A2')));
    expect(chosen(renamed.present)).toBe('A2');
    expect(chosen(undo(renamed).present)).toBe('A');
    expect(chosen(redo(undo(renamed)).present)).toBe('A2');
    expect(chosen(undo(choose(renamed, 'B')).present)).toBe('B');
  });

  test('[S203] deleting the chosen subject and taking that back chooses it again, unless another was chosen', () => {
    const deleted = perform(atA, 'delete A', deleteEntry(atA.present, 'subjects', 'A'));
    expect(chosen(undo(deleted).present)).toBe('A');
    expect(chosen(undo(choose(deleted, 'C')).present)).toBe('C');
  });

  test('[S204] a choice of what undo takes away gives way to the one before, and is back after redo', () => {
    const added = choose(perform(atA, 'add N', addEntry(atA.present, 'subjects', keyed('N'))), 'N');
    const back = undo(added);
    expect(chosen(back.present)).toBe('A');
    expect(readContents(back.present).problems).toEqual([]);
    expect(redo(back).present).toEqual(added.present);
  });

  test('[S205] a cancelled drag keeps what was chosen while it went on', () => {
    const drag = choose(rename(atA, 'under the pointer'), 'B');
    expect(chosen(pop(drag).present)).toBe('B');
  });

  test('[S206] bodies and lenses too, each for itself; members of a later program as well', () => {
    const later = replace(rename(atA, 'one'), {
      ...rename(atA, 'one').present,
      sunside: {
        ...rename(atA, 'one').present.sunside,
        current: { subject: 'A', body: 'fast', hat: 'wide' },
      },
    });
    // There is no body "fast": what was chosen there holds, which is none.
    expect(undo(later).present.sunside['current']).toEqual({ subject: 'A', hat: 'wide' });
  });

  test('[S207] without a choice in between undo gives back the very survey that was', () => {
    expect(undo(rename(atA, 'one')).present).toBe(atA.present);
  });
});
