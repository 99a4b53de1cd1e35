import type { Survey } from '../survey/document';
import { setCurrent } from '../survey/edits/set-members';
import { deepFreeze } from '../survey/freeze';
import * as steps from '../survey/history';
import type { Problem } from '../survey/problems';

export interface OpenedDocument {
  /** Key of the autosaved record: one survey, one record. */
  readonly id: string;
  readonly survey: Survey;
  /** What was odd when the file was read. */
  readonly problems: readonly Problem[];
  /** Written by a newer program: shown, never changed. */
  readonly readOnly: boolean;
}

/** The open survey with its history. Nothing else holds a survey that can be edited. */
export class SurveyDocument {
  #history = $state.raw<steps.History>() as steps.History;
  #opened = $state.raw<OpenedDocument>() as OpenedDocument;

  /** Derived, so that a newer state of the same survey does not look like another survey. */
  readonly #id = $derived(this.#opened.id);

  readonly #changed: () => void;

  /** `changed` is called after every change of the survey, opening another one excepted. */
  constructor(opened: OpenedDocument, changed: () => void) {
    this.#changed = changed;
    this.open(opened);
  }

  get id(): string {
    return this.#id;
  }
  get survey(): Survey {
    return this.#history.present;
  }
  get readOnly(): boolean {
    return this.#opened.readOnly;
  }
  /** Problems found on opening; those of the contents come with the figures. */
  get openingProblems(): readonly Problem[] {
    return this.#opened.problems;
  }
  get undoLabel(): string | null {
    return this.#history.past.at(-1)?.label ?? null;
  }
  get redoLabel(): string | null {
    return this.#history.future[0]?.label ?? null;
  }

  open(opened: OpenedDocument): void {
    this.#opened = opened;
    this.#history = steps.startHistory(frozen(opened.survey));
  }

  /** The same survey with its history goes on under another key: as a copy. */
  continueAs(id: string): void {
    this.#opened = { ...this.#opened, id };
  }

  /** One undo step, named for what the user meant. Also the beginning of a drag. */
  perform(label: string, edit: (survey: Survey) => Survey): void {
    this.#change((history) => steps.perform(history, label, frozen(edit(history.present))));
  }

  /** The step under the pointer goes on. */
  replace(edit: (survey: Survey) => Survey): void {
    this.#change((history) => steps.replace(history, frozen(edit(history.present))));
  }

  /** Another subject, body or lens is looked at: no step, and what can be undone and redone stays so. */
  choose(chosen: Parameters<typeof setCurrent>[1]): void {
    this.#change((history) => steps.replace(history, frozen(setCurrent(history.present, chosen))));
  }

  /** The last step never happened: a cancelled drag. */
  cancel(): void {
    this.#change(steps.pop);
  }
  undo(): void {
    this.#change(steps.undo);
  }
  redo(): void {
    this.#change(steps.redo);
  }

  #change(change: (history: steps.History) => steps.History): void {
    if (this.readOnly) return;
    const before = this.survey;
    this.#history = change(this.#history);
    if (this.survey !== before) this.#changed();
  }
}

const frozen = (survey: Survey): Survey => (import.meta.env.DEV ? deepFreeze(survey) : survey);
