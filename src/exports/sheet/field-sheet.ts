/** A window of a stay in words, one cell each. */
export interface SheetWindow {
  readonly time: string;
  readonly path: string;
  readonly light: string;
  /** What is needed, and from how far. */
  readonly picture: string;
  readonly lens: string;
  readonly settings: string;
}

/** Time at a spot, as it stands on paper. */
export interface SheetStay {
  readonly time: string;
  readonly spot: string;
  /** When to leave where, how long and how far it is; when to be there, at the first. */
  readonly way: string;
  readonly windows: readonly SheetWindow[];
  /** What to do if the wind turns, a sentence each. */
  readonly instead: readonly string[];
  /** Access, contact, permission, hours, parking, ladder, position: a label and what is known. */
  readonly place: readonly (readonly [label: string, text: string])[];
}

export interface SheetTable {
  readonly headings: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** A headed part of the sheet: sentences, a list, a table, and what is to be said behind it. */
export interface SheetPart {
  readonly title: string;
  readonly lines?: readonly string[];
  /** Things to tick with a pencil. */
  readonly ticks?: readonly string[];
  readonly table?: SheetTable;
  readonly after?: readonly string[];
  readonly wide?: boolean;
}

/** All that stands on a field sheet, in words as the screen has them. */
export interface FieldSheet {
  readonly title: string;
  readonly day: string;
  /** Ends in use, sun, whom to ring: what one looks for first, a label and a text each. */
  readonly head: readonly (readonly [label: string, text: string])[];
  readonly stays: readonly SheetStay[];
  /** Said where there are none, or others than were ticked. */
  readonly staysNote: string | null;
  /** What is doubtful: it stands before the map. */
  readonly doubts: readonly string[];
  readonly parts: readonly SheetPart[];
  readonly cautions: readonly string[];
  readonly made: string;
}
