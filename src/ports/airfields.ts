import type { LitSpan } from '../figures/types';
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

/** An airfield of the catalogue at some distance. */
export interface NearAirfield extends AirfieldMatch {
  readonly position: Position;
  /** m in a straight line. */
  readonly distance: number;
  /** "07/25", length in m and surface as published; what the data do not say is null or "". Null: not loaded. */
  readonly strips:
    readonly { readonly name: string; readonly length: number | null; readonly surface: string }[] | null;
}

/** Which sides of an airfield's runways are lit through a day. */
export interface NearLight {
  /** IANA name. */
  readonly timeZone: string;
  /** First instant of the day there and of the next, ms since 1970. */
  readonly day: { readonly from: number; readonly to: number };
  /** By runway; those that the data do not locate are missing. */
  readonly runways: readonly { readonly name: string; readonly spans: readonly LitSpan[] }[];
}

/** The airfield catalogue and the surveys that start from it: built by airfields.ts, which knows the imports. */
export interface Airfields {
  /** Fetches the catalogue once. Null when it is there, else why it is not, in words for the user. */
  load(): Promise<string | null>;
  /** What fits the typed text, best first; nothing before the catalogue is there. */
  search(text: string): readonly AirfieldMatch[];
  /** Where an airfield of the catalogue is; null before it is there. */
  positionOf(match: AirfieldMatch): Position | null;
  /** All within `reach` m of a straight line, nearest first, whatever their size; none before the catalogue is there. */
  near(from: Position, reach: number): Promise<readonly NearAirfield[]>;
  /** The light on a date at one of them. */
  lightAt(airfield: NearAirfield, date: string): Promise<NearLight>;
  /** Starts a survey of one airfield and shows it. */
  start(match: AirfieldMatch): Promise<void>;
  /** Starts a survey with nothing drawn yet at a position. */
  startEmpty(name: string, position: Position): Promise<void>;
  /** Whose data it is and under which licence: shown wherever the matches are. */
  readonly credit: { readonly text: string; readonly licence: string; readonly licenceUrl: string };
}
