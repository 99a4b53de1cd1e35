import type { Survey } from '../survey/document';
import type { SurveyDocument } from './document.svelte';

type Steps = Pick<SurveyDocument, 'survey' | 'perform' | 'replace' | 'cancel'>;

/**
 * One undo step that takes many edits, as a drag, a key held down or a series of keys does: the first one performs it,
 * the next ones replace what it made. It is over as soon as anything else has changed the survey, so that nobody's work is overwritten.
 */
export class Step {
  readonly #document: Steps;
  readonly #label: string;
  #left: Survey | null = null;

  constructor(document: Steps, label: string) {
    this.#document = document;
    this.#label = label;
  }

  get begun(): boolean {
    return this.#left !== null;
  }

  /** Whether the survey is still as this step left it. */
  get goesOn(): boolean {
    return this.#left === this.#document.survey;
  }

  change(edit: (survey: Survey) => Survey): void {
    if (this.begun && !this.goesOn) return;
    if (this.begun) {
      this.#document.replace(edit);
      this.#left = this.#document.survey;
      return;
    }
    const before = this.#document.survey;
    this.#document.perform(this.#label, edit);
    if (this.#document.survey !== before) this.#left = this.#document.survey;
  }

  /** It never happened. */
  cancel(): void {
    if (this.begun && this.goesOn) this.#document.cancel();
    this.#left = null;
  }
}
