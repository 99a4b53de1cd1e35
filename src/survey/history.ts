import type { Survey } from './document';

interface Step {
  readonly survey: Survey;
  /** What the user did, as the undo button says it: "move standing spot". */
  readonly label: string;
}

/** Surveys with labels; they share what did not change, so 500 of them cost little. Not stored. */
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

/** One step: an edit, or the beginning of a drag that `replace` carries on. */
export function perform(history: History, label: string, survey: Survey): History {
  if (survey === history.present) return history;
  const past = [...history.past, { survey: history.present, label }].slice(-mostSteps);
  return { past, present: survey, future: [], shelved: history.future };
}

/** The step goes on: the survey under the pointer changes, no step is added. */
export const replace = (history: History, survey: Survey): History => ({ ...history, present: survey });

/** The step never happened: back to the survey before it, and to what could be redone then. */
export function pop(history: History): History {
  const last = history.past.at(-1);
  if (!last) return history;
  return { past: history.past.slice(0, -1), present: last.survey, future: history.shelved, shelved: [] };
}

export function undo(history: History): History {
  const last = history.past.at(-1);
  if (!last) return history;
  const undone = { survey: history.present, label: last.label };
  return {
    past: history.past.slice(0, -1),
    present: last.survey,
    future: [undone, ...history.future],
    shelved: [],
  };
}

export function redo(history: History): History {
  const [next, ...future] = history.future;
  if (!next) return history;
  const past = [...history.past, { survey: history.present, label: next.label }];
  return { past, present: next.survey, future, shelved: [] };
}
