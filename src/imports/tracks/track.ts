import type { Position } from '../../survey/document';

/** The years that a survey's instants lie in. */
const [earliest, latest] = [Date.UTC(1900, 0, 1), Date.UTC(2200, 0, 1)];

/** An instant of a recorded flight in ms since 1970; null for none, or one in no year of aviation. */
export const flownAt = (instant: number | null): number | null =>
  instant !== null && instant >= earliest && instant < latest ? instant : null;

/** A point of a recorded flight as its file has it. */
export interface TrackPoint {
  readonly position: Position;
  /** In the file's unit and counted from whatever the file counts from; null where it says nothing. */
  readonly altitude: number | null;
  /** ms since 1970, null where the file says nothing. */
  readonly time: number | null;
}

export interface Track {
  readonly name: string;
  readonly points: readonly TrackPoint[];
  /** Unit of the altitudes; null where the file does not say. */
  readonly unit: 'm' | 'ft' | null;
}

/** A named point. */
export interface Waypoint {
  readonly name: string;
  readonly notes: string;
  readonly position: Position;
}

export interface TracksRead {
  readonly tracks: readonly Track[];
  readonly waypoints: readonly Waypoint[];
  readonly leftOut: readonly { readonly what: string; readonly reason: string; readonly count: number }[];
  readonly remarks: readonly string[];
}
