import type { FieldDay } from '../figures/trip/field-day';
import type { Wind } from '../figures/traffic/wind/wind';
import type { TripSheet } from '../exports/trip/trip-sheet';

/** One kept survey on one day. */
export interface FoundDay {
  /** Id of the kept survey. */
  readonly survey: string;
  /** What the list calls it. */
  readonly name: string;
  readonly day: FieldDay;
  /** Whose data it is, in full. */
  readonly credits: readonly string[];
  /** m in a straight line from where one starts, and minutes; null while that is not known, and before it is ranked. */
  readonly way: { readonly distance: number; readonly minutes: number } | null;
}

export interface CompareAsked {
  readonly surveys: readonly { readonly id: string; readonly name: string }[];
  readonly dates: readonly string[];
  /** Null: what each survey itself expects. */
  readonly wind: Wind | null;
}

export interface Comparing {
  /** What could not be compared, a sentence each; null when it was cancelled. */
  readonly done: Promise<readonly string[] | null>;
  cancel(): void;
}

/** Kept surveys side by side: built by services/field-trips.ts. */
export interface Trips {
  /** Reads and computes beside the page; each field and day is told as it is there. */
  compare(asked: CompareAsked, told: (found: FoundDay) => void): Comparing;
  /** The wind that somebody typed, or why it is none. */
  readWind(
    text: string,
  ): { readonly ok: true; readonly value: Wind } | { readonly ok: false; readonly reason: string };
  /** Fields of one day, most good passes first, and those that nobody can rank; with the traffic and ways as they are now. */
  rank(found: readonly FoundDay[]): {
    readonly ranked: readonly FoundDay[];
    readonly unranked: readonly FoundDay[];
  };
  /** As a page to print. Null, or why it could not be saved. */
  saveSheet(sheet: TripSheet): Promise<string | null>;
}

/** What was chosen and found before the question was closed. */
export interface TripsLeft {
  /** Ids of kept surveys. */
  readonly chosen: ReadonlySet<string>;
  /** A local date, and how many days from it. */
  readonly date: string;
  readonly span: '1' | '7';
  /** As typed. */
  readonly wind: string;
  readonly found: readonly FoundDay[];
  /** What `found` is of: dates, and how many are expected. */
  readonly asked: { readonly dates: readonly string[]; readonly count: number } | null;
  readonly trip: readonly FoundDay[];
}

/** Comes when it is asked for: most visits compare nothing. */
export interface LateTrips {
  there(): Promise<Trips>;
  /** As it was left when it was last closed, for as long as the page lives. */
  left: TripsLeft | null;
}
