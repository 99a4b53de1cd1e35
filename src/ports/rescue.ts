import type { SurveyDocument } from '../state/document.svelte';
import type { View } from '../state/view.svelte';
import type { Files } from './files';

/** What can still be done where the page cannot show a survey. Nothing of it needs to understand the survey. */
export interface Rescue {
  /** The kept survey that this page should have begun with; null when it could be read, or another is open by now. */
  readonly unread: { readonly name: string; readonly reason: string } | null;
  /** Saves what cannot be shown to a file, as it is. Answers with what became of it, null for nothing. */
  save(): Promise<string | null>;
  readonly document: SurveyDocument;
  readonly view: View;
  readonly files: Pick<Files, 'open' | 'openSample' | 'surveys'>;
}
