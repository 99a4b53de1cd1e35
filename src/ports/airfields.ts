import type { Position } from '../survey/document';

/** One line of the airfield search. */
export interface AirfieldMatch {
  /** Unlike that of any other line. */
  readonly key: number;
  /** The code that people know it by, "" for none, and all others. */
  readonly code: string;
  readonly otherCodes: readonly string[];
  readonly name: string;
  /** "Town, Country", as far as the data say. */
  readonly place: string;
  /** "heliport", "seaplane base"; "" for the usual kinds. */
  readonly kind: string;
  /** Runways of which both ends are known, and all that the data name. */
  readonly locatedRunways: number;
  readonly runways: number;
}

/** The airfield catalogue and the surveys that start from it: built by airfields.ts, which knows the imports. */
export interface Airfields {
  /** Fetches the catalogue once. Null when it is there, else why it is not, in words for the user. */
  load(): Promise<string | null>;
  /** What fits the typed text, best first; nothing before the catalogue is there. */
  search(text: string): readonly AirfieldMatch[];
  /** Starts a survey of one airfield and shows it. */
  start(match: AirfieldMatch): Promise<void>;
  /** Starts a survey with nothing drawn yet at a position. */
  startEmpty(name: string, position: Position): Promise<void>;
  /** Whose data it is and under which licence: shown wherever the matches are. */
  readonly credit: { readonly text: string; readonly licence: string; readonly licenceUrl: string };
}
