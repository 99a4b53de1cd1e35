/** One survey as it is kept on this device. `changed`: ms since 1970; `revision` grows with every write. */
export interface StoredSurvey {
  readonly id: string;
  readonly name: string;
  readonly changed: number;
  readonly revision: number;
  readonly text: string;
}

/** What a list says of a survey besides its name. Kept as it is handed over, never interpreted here. */
export interface SurveyFacts {
  /** The airfield's code; for a survey without a name and a code its coordinates; "" for neither. */
  readonly place: string;
  /** The day that was planned, ISO 8601; null for none. */
  readonly date: string | null;
  readonly spots: number;
  /** Longitude and latitude; null or absent where that is not known. */
  readonly at?: readonly [lng: number, lat: number] | null;
}

/** A survey in the list: everything but its text. */
export interface SurveySummary extends Omit<StoredSurvey, 'text'> {
  /** Length of the text in UTF-16 units. */
  readonly size: number;
  /** Null for a survey that was kept before the list said more than its name. */
  readonly facts: SurveyFacts | null;
  /** When it was deleted, ms since 1970; null while it is in the list. */
  readonly deleted: number | null;
}

/** A survey as it is handed over for keeping. */
export interface SurveyToKeep extends Omit<StoredSurvey, 'revision'> {
  readonly facts: SurveyFacts;
}

/** What one tab tells the others when it has changed what is kept. */
export interface KeptNote {
  readonly id: string;
  /** The revision that is kept now; null when the survey was deleted. */
  readonly revision: number | null;
}

/** A request that the browser may refuse, with the reason in words that complete "not kept: ...". */
export type Outcome<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly reason: string };
