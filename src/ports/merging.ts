import type { Survey } from '../survey/document';
import type { Json } from '../survey/json';

/** What is done about a question; "both": theirs stays beside mine as a thing of its own. */
export type MergeAnswer = 'mine' | 'theirs' | 'both';

/** What both surveys say differently. */
export interface MergeQuestion {
  /** Unlike that of any other question. */
  readonly key: string;
  /** Id of the feature, null for the survey itself. */
  readonly id: string | null;
  /** RFC 6901 within the feature or the survey; "" is the whole feature. */
  readonly pointer: string;
  /** `undefined`: not there. */
  readonly mine: Json | undefined;
  readonly theirs: Json | undefined;
  /** m between the two places that are farthest apart; null where the question is not about a place, or corners differ in number. */
  readonly apart: number | null;
  readonly answer: MergeAnswer | null;
  /** Whether both can stay. */
  readonly canBoth: boolean;
}

/** What comes in or goes without a question. */
export interface MergeChange {
  readonly id: string | null;
  readonly pointers: readonly string[];
}

/** Another survey of this field on its way into the open one. Nothing has changed before `take`. */
export interface MergeUnderWay {
  /** "friend.geojson", "the other tab". */
  readonly from: string;
  /** The open survey, and theirs with its ids for what both have. */
  readonly mine: Survey;
  readonly theirs: Survey;
  readonly questions: readonly MergeQuestion[];
  /** Features of mine beside which theirs stays, and the id that theirs gets. */
  readonly beside: ReadonlyMap<string, string>;
  /** Ids of features that only they have, and of those that they deleted. */
  readonly added: readonly string[];
  readonly deleted: readonly string[];
  readonly changed: readonly MergeChange[];
  /** How many things were found to be the same under other ids. */
  readonly same: number;
  /** Questions without an answer. */
  readonly open: number;
  /** Whether taking it would change anything. */
  readonly anything: boolean;
  answer(question: MergeQuestion, answer: MergeAnswer): void;
  answerAll(answer: 'mine' | 'theirs'): void;
  /** One of theirs stays beside mine no longer: its questions are asked again. */
  askAgain(id: string): void;
  /** Puts it into the open survey as one undo step, once nothing is open. */
  take(): void;
  leave(): void;
}

/** Two surveys of one field made one: built by services/merging.svelte.ts. */
export interface Merging {
  /** Null while nothing is merged, and as soon as another survey is open. */
  readonly underWay: MergeUnderWay | null;
  /** Lets the user pick a file; a given one is taken. What is no survey of this field is said in the notice. */
  withFile(file?: File): Promise<void>;
  /** A survey that is kept on this device. */
  withKept(id: string): Promise<void>;
  /** What another tab has saved of the open survey. */
  withOtherTab(): Promise<void>;
}
