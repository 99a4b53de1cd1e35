import type { Position } from '../../survey/document';

export type Tags = Readonly<Record<string, string>>;

/** A way with the positions of its nodes. `missing`: how many of them are not in the file. */
export interface OsmWay {
  readonly id: string;
  readonly tags: Tags;
  readonly positions: readonly Position[];
  readonly missing: number;
}

export interface OsmMember {
  /** Id of a way. */
  readonly ref: string;
  readonly role: string;
  /** Where the file gives the member's geometry itself. */
  readonly positions: readonly Position[] | null;
}

/** A relation with those of its members that are ways. */
export interface OsmRelation {
  readonly id: string;
  readonly tags: Tags;
  readonly members: readonly OsmMember[];
}

export interface OsmData {
  readonly ways: ReadonlyMap<string, OsmWay>;
  readonly relations: readonly OsmRelation[];
  /** How many nodes are trees on their own. */
  readonly trees: number;
  readonly remarks: readonly string[];
}

export type OsmReading =
  { readonly ok: true; readonly data: OsmData } | { readonly ok: false; readonly reason: string };

/** Something with tags and a shape of its own. */
export interface Mapped {
  /** "way/123", "relation/45", "relation/45#2" for the second of its areas. */
  readonly id: string;
  readonly tags: Tags;
  /** Rings for areas, one open or closed line otherwise. */
  readonly rings: readonly (readonly Position[])[] | null;
  readonly line: readonly Position[] | null;
}

/** A longitude and latitude that can be on the earth. */
export const isPlace = (lng: number, lat: number): boolean => Math.abs(lng) <= 180 && Math.abs(lat) <= 90;

export const samePlace = (a: Position | undefined, b: Position | undefined): boolean =>
  a !== undefined && b !== undefined && a[0] === b[0] && a[1] === b[1];

export const isClosed = (line: readonly Position[]): boolean =>
  line.length >= 4 && samePlace(line[0], line.at(-1));
