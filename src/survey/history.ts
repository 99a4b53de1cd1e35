import { carryChoices } from './carry-choices';
import type { Survey } from './document';
import type { Json } from './json';

interface Step {
  readonly survey: Survey;
  /** What the user did, as the undo button says it: "move standing spot". */
  readonly label: string;
  /** What was chosen (`current`) on the other side of the step as it was taken: what differs now was chosen since. */
  readonly left: Json | undefined;
}

/** Surveys with labels; what is chosen in them is carried along, since a choice is no step. They share what did not change, so 500 of them cost little. Not stored. */
export interface History {
  readonly past: readonly Step[];
  readonly present: Survey;
  readonly future: readonly Step[];
  /** The future before the last step: a cancelled drag gives it back. */
  readonly shelved: readonly Step[];
}

export const mostSteps = 500;

export const startHistory = (survey: Survey): History => ({
  past: [],
  present: survey,
  future: [],
  shelved: [],
});

const chosenIn = (survey: Survey): Json | undefined => survey.sunside['current'];

/** One step: an edit, or the beginning of a drag that `replace` carries on. */
export function perform(history: History, label: string, survey: Survey): History {
  if (survey === history.present) return history;
  const past = [...history.past, { survey: history.present, label, left: chosenIn(survey) }].slice(
    -mostSteps,
  );
  return { past, present: survey, future: [], shelved: history.future };
}

/** The step goes on: the survey under the pointer changes, no step is added. Also for a choice, which is no step. */
export const replace = (history: History, survey: Survey): History => ({ ...history, present: survey });

/** The step never happened: back to the survey before it, and to what could be redone then. */
export function pop(history: History): History {
  const last = history.past.at(-1);
  if (!last) return history;
  const present = carryChoices(last.survey, history.present, last.left);
  return { past: history.past.slice(0, -1), present, future: history.shelved, shelved: [] };
}

export function undo(history: History): History {
  const last = history.past.at(-1);
  if (!last) return history;
  const present = carryChoices(last.survey, history.present, last.left);
  const undone = { survey: history.present, label: last.label, left: chosenIn(present) };
  return { past: history.past.slice(0, -1), present, future: [undone, ...history.future], shelved: [] };
}

export function redo(history: History): History {
  const [next, ...future] = history.future;
  if (!next) return history;
  const present = carryChoices(next.survey, history.present, next.left);
  const past = [...history.past, { survey: history.present, label: next.label, left: chosenIn(present) }];
  return { past, present, future, shelved: [] };
}
