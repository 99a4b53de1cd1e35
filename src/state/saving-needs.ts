import type { Written } from '../storage/autosave';
import type { StoredSurvey, SurveyFacts, SurveyToKeep } from '../storage/records';

/** What saving needs to know of the open survey. */
export interface Saveable {
  readonly id: string;
  readonly name: string;
  readonly facts: SurveyFacts;
  /** Makes its text, step by step. */
  readonly text: () => Generator<void, string>;
}

/** What saving needs of the world; injected, so that it is tested without a browser. */
export interface SavingNeeds {
  write(survey: SurveyToKeep, knownRevision: number): Promise<Written>;
  read(id: string): Promise<StoredSurvey | null>;
  /** The open survey. */
  open(): Saveable;
  /** Puts a survey down at once, where the next page finds it if this one goes before it is written. */
  leave(survey: SurveyToKeep, knownRevision: number): void;
  /** What was put down is kept by now. */
  forget(): void;
  /** Shows what another tab has written: nothing here is unsaved. Whether it is shown. */
  follow(theirs: StoredSurvey): Promise<boolean>;
  now(): number;
}
