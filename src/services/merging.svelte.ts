import { messageOf, surveyFile } from '../keeping/survey-files';
import type { Merging } from '../ports/merging';
import type { SurveyDocument } from '../state/document.svelte';
import type { Saving } from '../state/saving.svelte';
import { Turns } from '../state/turns';
import type { View } from '../state/view.svelte';
import type { Autosave } from '../storage/autosave';
import { pickFile } from '../storage/files';
import type { SurveyMerge } from './survey-merge.svelte';

export interface MergingNeeds {
  readonly document: SurveyDocument;
  readonly saving: Pick<Saving, 'theirs' | 'began' | 'tookIn'>;
  readonly view: Pick<View, 'notice' | 'offer'>;
  readonly store: Pick<Autosave, 'read'>;
}

/** The other side of a merge, before it is read. */
export interface OtherSide {
  /** What messages call it. */
  readonly from: string;
  readonly source: File | string;
  /** Text of what both began as. */
  readonly base: string | null;
  /** False once there is nothing to merge any more: the two tabs have been settled otherwise. */
  readonly holds: () => boolean;
  readonly taken: () => void;
}

/**
 * Another survey of this field beside the open one. What was chosen last is merged, in whatever order files are read;
 * a merge ends when another survey is opened.
 */
export class SurveyMerging implements Merging {
  #merge = $state.raw<SurveyMerge | null>(null);
  readonly #needs: MergingNeeds;
  readonly #turns = new Turns();

  constructor(needs: MergingNeeds) {
    this.#needs = needs;
  }

  get underWay(): SurveyMerge | null {
    return this.#merge?.holds ? this.#merge : null;
  }

  async withFile(given?: File): Promise<void> {
    const file = given ?? (await this.#picked());
    if (file) await this.#begin({ ...always, from: file.name, source: file });
  }

  async withKept(id: string): Promise<void> {
    const isLast = this.#turns.begin();
    const stored = await this.#needs.store.read(id);
    if (!isLast()) return;
    if (stored) await this.#begin({ ...always, from: stored.name || 'Unnamed survey', source: stored.text });
    else this.#needs.view.notice = 'This survey is not kept on this device any more.';
  }

  async withOtherTab(): Promise<void> {
    const { saving } = this.#needs;
    const { theirs } = saving;
    if (!theirs) return;
    await this.#begin({
      from: 'the other tab',
      source: theirs.text,
      base: saving.began,
      holds: () => saving.theirs === theirs,
      taken: () => saving.tookIn(theirs),
    });
  }

  async #picked(): Promise<File | null> {
    try {
      return (await pickFile(surveyFile))?.file ?? null;
    } catch (error) {
      this.#needs.view.notice = `The file could not be read: ${messageOf(error)}`;
      return null;
    }
  }

  async #begin(side: OtherSide): Promise<void> {
    const { document, view } = this.#needs;
    const isLast = this.#turns.begin();
    const { id } = document;
    const end = (merge: SurveyMerge) => {
      if (this.#merge === merge) this.#merge = null;
    };
    try {
      const { beginMerge } = await import('./begin-merge');
      const begun = await beginMerge(side, { document, view, end });
      // Another survey was opened, or the tabs were settled, while a long file was read.
      if (!isLast() || document.id !== id || !side.holds()) return;
      if (typeof begun === 'string') view.notice = begun;
      else this.#merge = begun;
    } catch (error) {
      if (isLast()) view.notice = `${side.from} could not be read: ${messageOf(error)}.`;
    }
  }
}

const always = { base: null, holds: () => true, taken: () => undefined };
