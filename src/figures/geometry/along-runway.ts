import type { Position } from '../../survey/document';
import { Memo } from '../../survey/memo';
import type { Runway } from '../../survey/schema/runway';
import { RAD } from './angles';
import { frameAt, groundLine, mapped, type Frame } from './earth';

interface Line {
  readonly frame: Frame;
  readonly azimuth: number;
  readonly length: number;
  readonly east: number;
  readonly north: number;
}

/** A runway under this length in m has no direction worth the name. */
export const shortestRunway = 1;

const kept = new Memo<Line | null>();

function lineOf(runway: Runway): Line | null {
  return kept.get([runway], () => measured(runway));
}

/** Length of a runway in m along the ground; null under 1 m. */
export const runwayLength = (runway: Runway): number | null => lineOf(runway)?.length ?? null;

function measured(runway: Runway): Line | null {
  const { distance: length, azimuth } = groundLine(runway.line[0], runway.line[1]);
  const radians = (azimuth ?? 0) * RAD;
  return azimuth === null || length < shortestRunway
    ? null
    : {
        frame: frameAt(runway.line[0]),
        azimuth,
        length,
        east: Math.sin(radians),
        north: Math.cos(radians),
      };
}

/** Where a position lies against a runway's centreline, in m along the curved earth. */
export interface AlongRunway {
  /** m from position 0, positive towards position 1. */
  readonly station: number;
  /** m to the right (+) or left (-) of the infinite line, seen from position 0. */
  readonly offset: number;
  readonly length: number;
  /** True bearing in degrees at position 0. */
  readonly azimuth: number;
}

/** Null for a runway without direction. Within 0.05 m of GeographicLib up to 6 km from the runway. */
export function alongRunway(runway: Runway, position: Position): AlongRunway | null {
  const line = lineOf(runway);
  if (!line) return null;
  const [x, y] = mapped(line.frame, position);
  return {
    station: x * line.east + y * line.north,
    offset: x * line.north - y * line.east,
    length: line.length,
    azimuth: line.azimuth,
  };
}
