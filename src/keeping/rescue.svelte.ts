import type { Files } from '../ports/files';
import type { Rescue } from '../ports/rescue';
import type { SurveyDocument } from '../state/document.svelte';
import type { View } from '../state/view.svelte';
import { saveFile } from '../storage/files';
import type { StoredSurvey } from '../storage/records';
import type { Survey } from '../survey/document';
import { saveSurvey } from '../survey/save';
import { aboutSurvey, fileName, messageOf, surveyFile } from './survey-files';

export interface RescueNeeds {
  readonly document: SurveyDocument;
  readonly view: View;
  readonly files: Files;
}

/** Brings a survey that cannot be shown into safety, and another one onto the page. */
export class SurveyRescue implements Rescue {
  readonly #needs: RescueNeeds;
  #found = $state.raw<{
    readonly stored: StoredSurvey;
    readonly reason: string;
    /** What the page shows in its place. */
    readonly instead: Survey;
  } | null>(null);

  constructor(needs: RescueNeeds) {
    this.#needs = needs;
  }

  get document(): SurveyDocument {
    return this.#needs.document;
  }
  get view(): View {
    return this.#needs.view;
  }
  get files(): Files {
    return this.#needs.files;
  }

  get unread(): Rescue['unread'] {
    const unread = this.#unread;
    return unread && { name: unread.stored.name, reason: unread.reason };
  }

  /** The page begins with a survey that it cannot show. */
  found(stored: StoredSurvey, reason: string): void {
    this.#found = { stored, reason, instead: this.#needs.document.survey };
  }

  async save(): Promise<string | null> {
    const { survey } = this.#needs.document;
    const stored = this.#unread?.stored;
    const { name, text } = stored ?? { name: aboutSurvey(survey).name, text: saveSurvey(survey) };
    try {
      return (await saveFile(text, fileName(name), surveyFile, null)) && 'Saved to a file, as it was.';
    } catch (error) {
      return `The file could not be saved: ${messageOf(error)}`;
    }
  }

  /** Until another survey is open. */
  get #unread() {
    const found = this.#found;
    return found?.instead === this.#needs.document.survey ? found : null;
  }
}
