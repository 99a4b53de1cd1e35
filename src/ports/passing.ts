import type { Survey } from '../survey/document';

/** A survey that came in a link: nothing of it is kept yet. */
export interface Arrived {
  readonly name: string;
  /** "1 runway", "3 standing spots": what is in it. */
  readonly counts: readonly { readonly kind: string; readonly count: number }[];
  /** Opens it as a survey of its own, and keeps it. */
  open(): Promise<void>;
  /** Asks what of it shall come into the open survey, where both are of one field. */
  merge(): Promise<void>;
  leave(): void;
}

/** A survey that leaves this device. */
export interface PassingOutside {
  /** The link that holds a survey, null where it would be too long. */
  link(survey: Survey): Promise<string | null>;
  /** Null, or why it could not be saved. */
  save(survey: Survey): Promise<string | null>;
  /** Whether this device has a share sheet that takes files. */
  readonly canShare: boolean;
  /** Null, or why it could not be handed over. */
  share(survey: Survey): Promise<string | null>;
  /** Null, or why it could not be copied. */
  copy(text: string): Promise<string | null>;
}

/** Surveys that leave this device, and those that come in a link. */
export interface Passing {
  /** Comes when it is asked for: most visits hand nothing over. */
  out(): Promise<PassingOutside>;
  readonly arrived: Arrived | null;
}
