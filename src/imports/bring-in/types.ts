import type { Incoming } from '../../survey/brought-in';
import type { Position } from '../../survey/document';
import type { JsonObject } from '../../survey/json';
import type { SourceCredit } from '../../survey/sources';

/** What stands in the way of sight, and what is only ground: of either the nearest come in. */
export const obstacleGroups = ['buildings', 'walls', 'fences', 'hedges', 'tree rows', 'woods'] as const;
export const groundGroups = [
  'roads',
  'paths',
  'parking',
  'greens',
  'water',
  'railways',
  'outlines of aerodromes',
] as const;

/** Kinds of things as the preview counts and ticks them, in the order in which it lists them. */
export const groups = [
  'runways',
  'taxi routes',
  'aprons',
  'flight paths',
  'standing spots',
  ...obstacleGroups,
  ...groundGroups,
] as const;
export type Group = (typeof groups)[number];

/** Something that may come in. `assumed`: its height is nobody's word but ours. */
export interface Candidate extends Incoming {
  readonly group: Group;
  readonly assumed?: boolean;
}

/** What stays out, in words for the user: "buildings", "farther than 3,000 m from runways and spots". */
export interface LeftOut {
  readonly what: string;
  readonly reason: string;
  readonly count: number;
}

/** What an import needs to know of the survey that it comes into. */
export interface Surroundings {
  /** Null for a survey that does not say yet where it is. */
  readonly reference: Position | null;
  /** m above mean sea level, null when not known. */
  readonly elevation: number | null;
  readonly runways: readonly KnownRunway[];
  readonly spots: readonly Position[];
  /** m: the height of the aircraft that is being photographed. */
  readonly subjectHeight: number;
}

export interface KnownRunway {
  readonly name: string;
  readonly line: readonly [Position, Position];
  /** m above mean sea level of the two ends, null when not known. */
  readonly elevations: readonly [number | null, number | null];
  /** Where it was brought in from; null for one that was drawn. */
  readonly source: string | null;
}

/** What the altitudes of a recorded flight are counted from. */
export type AltitudeMeaning = 'sea-level' | 'pressure' | 'ellipsoid';

/** What the preview asks, with the user's answers. */
export interface Answers {
  /** m round the survey's reference. */
  readonly radius: number;
  /** m above the ground, for buildings of unknown height. */
  readonly buildingHeight: number;
  /** Which airfield of a table; null for the nearest. */
  readonly airfield: string | null;
  readonly altitudeMeaning: AltitudeMeaning;
  /** hPa: the altimeter setting of the place and day, for pressure altitudes counted from 1013.25. */
  readonly qnh: number;
  /** m: how far mean sea level lies above the ellipsoid there; negative below. */
  readonly geoid: number;
  /** Unit of altitudes that do not say theirs. */
  readonly altitudeUnit: 'm' | 'ft';
  /** Shift each flight so that its lowest point on a runway lies on that runway. */
  readonly tieToRunway: boolean;
}

/** An airfield of a table, to choose from. */
export interface AirfieldChoice {
  readonly ident: string;
  readonly name: string;
  /** m from the survey's reference, null without one. */
  readonly away: number | null;
}

/** What would come in, what would not and why; nothing is changed yet. */
export interface Proposal {
  readonly candidates: readonly Candidate[];
  readonly leftOut: readonly LeftOut[];
  /** What is odd about the file as a whole. */
  readonly remarks: readonly string[];
  readonly credits: readonly SourceCredit[];
  /** What is said of the site, for a survey that says nothing yet. */
  readonly site: JsonObject;
  /** Which questions make a difference here. */
  readonly asks: {
    readonly radius: boolean;
    readonly buildingHeight: boolean;
    readonly altitude: boolean;
    readonly altitudeUnit: boolean;
    readonly airfields: readonly AirfieldChoice[];
  };
  /** The middle of what the file holds, null for nothing; and what the airfield there is called, "" where it does not say. */
  readonly middle: Position | null;
  readonly placeName: string;
}

export const noQuestions: Proposal['asks'] = {
  radius: false,
  buildingHeight: false,
  altitude: false,
  altitudeUnit: false,
  airfields: [],
};

/** A file that has been read: asked again with other answers it need not be read again. */
export interface ReadSource {
  propose(surroundings: Surroundings, answers: Answers): Proposal;
}

export type ReadResult =
  | { readonly ok: true; readonly source: ReadSource }
  /** Names the place and the mend. */
  | { readonly ok: false; readonly reason: string };
