import type { Position } from '../../survey/document';
import type { Candidate } from '../../sweep/candidates';
import type { Area } from '../../sweep/area';
import { dateAt } from '../../time/local-time';

/** A candidate with what is said of it in a sentence. */
export interface ListedPlace {
  readonly candidate: Candidate;
  readonly name: string;
  readonly sentence: string;
  /** Expected good minutes of a visit, January first; null without a record of winds. */
  readonly expectedMinutes: readonly number[] | null;
}

/** All that is taken along of where to stand. */
export interface PlaceLists {
  readonly site: string;
  /** IANA name. */
  readonly zone: string;
  /** ms since 1970, UTC, of the first instant that was looked at: the light is that of this day. */
  readonly from: number;
  readonly places: readonly ListedPlace[];
  /** Whose maps and data stand behind them, in full, each once: licences ask that it goes with what is made of their data. */
  readonly credits: readonly string[];
  readonly area: Area;
  /** What the cells are of, and its unit: "good minutes", "min". */
  readonly layer: { readonly name: string; readonly unit: string; readonly levels: readonly number[] };
  /** Cell by cell, rows from the south; NaN for nothing. */
  readonly values: Float64Array;
  /** North-west, north-east, south-east and south-west corner of the area. */
  readonly corners: readonly [Position, Position, Position, Position];
}

/** The local date for which they hold: minutes and light of another day are others. */
export const dayOf = ({ from, zone }: Pick<PlaceLists, 'from' | 'zone'>): string => dateAt(from, zone);
