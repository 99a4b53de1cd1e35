import type { Mine } from '../state/mine.svelte';
import type { SurveyDocument } from '../state/document.svelte';

/** Tells what is the user's of every survey that is opened and of every change. */
export function followMine(mine: Mine, document: Pick<SurveyDocument, 'id' | 'survey'>): void {
  $effect.root(() => {
    $effect(() => mine.follow(document.id, document.survey));
  });
}
