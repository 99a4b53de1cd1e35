import type { NoticeLife } from '../state/view.svelte';
import type { Survey } from '../survey/document';
import type { Surveys } from './kept-surveys';

/** A survey that was just made (from the catalogue, or empty), and what is to be said of it. */
export interface NewSurvey {
  readonly survey: Survey;
  readonly notice: string | null;
  /** How long the notice stands. */
  readonly life?: NoticeLife;
}

/** Opening, saving and starting surveys: built by main.ts, which knows files and storage. */
export interface Files {
  /** Lets the user pick a file; a broken one leaves the open survey as it is and says why in the notice. */
  open(): Promise<void>;
  /** A dropped file. */
  openFile(file: File): Promise<void>;
  /** Saves to a file: by the browser's file access, or as a download. */
  save(): Promise<void>;
  /** Starts a survey that is being made, unless another one is chosen before it is there. */
  start(make: () => Promise<NewSurvey>): Promise<void>;
  /** Opens the invented sample site. */
  openSample(): Promise<void>;
  /** "saved 18:30", "saving ...", or what went wrong. */
  readonly status: { readonly text: string; readonly trouble: boolean };
  /** Set when another tab saved a newer state of this survey. */
  readonly conflict: { keepMine(): Promise<void>; takeTheirs(): Promise<void> } | null;
  /** Why the browser keeps nothing of the open survey's changes; null while it does, or once they are in a file. */
  readonly refused: string | null;
  readonly surveys: Surveys;
}
