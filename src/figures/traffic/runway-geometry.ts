import type { EndIndex, Runway } from '../../survey/schema/runway';
import { shortestRunway } from '../geometry/along-runway';
import { RAD } from '../geometry/angles';
import { frameAt, groundLine, placed, type Frame } from '../geometry/earth';
import type { Plane } from './pattern/on-track';
import { axesAt, type SampleState } from './samples';

/** m beyond which a line is no runway: a slip of the hand across half a country must not stall the page. */
export const longestFlown = 20_000;

/** A runway seen from one of its ends, looking along that end's landing direction. */
export interface EndGeometry {
  readonly runway: Runway;
  readonly end: EndIndex;
  /** Frame at the pavement end. */
  readonly frame: Frame;
  /** Degrees from true north. */
  readonly bearing: number;
  readonly east: number;
  readonly north: number;
  /** m between the pavement ends. */
  readonly length: number;
  /** m from the pavement end to the landing threshold, not more than the runway is long. */
  readonly displaced: number;
  /** Rise over run of the runway in the landing direction. */
  readonly slope: number;
  /** m above mean sea level of the pavement end. */
  readonly elevation: number;
  /** m above mean sea level of the ground at the landing threshold. */
  readonly thresholdElevation: number;
}

/** Elevations in m of the two pavement ends: stated, else that of the other end, else the field's. */
export function endElevations(runway: Runway, fieldElevation: number): readonly [number, number] {
  const [a, b] = [runway.ends[0].elevation, runway.ends[1].elevation];
  return [a ?? b ?? fieldElevation, b ?? a ?? fieldElevation];
}

/** The geometry of a runway's end; null for a runway that is too short to have one, or far too long to be one. */
export function endGeometry(runway: Runway, end: EndIndex, fieldElevation: number): EndGeometry | null {
  const here = runway.line[end];
  const { distance: length, azimuth } = groundLine(here, runway.line[end === 0 ? 1 : 0]);
  if (azimuth === null || length < shortestRunway || length > longestFlown) return null;
  const elevations = endElevations(runway, fieldElevation);
  const elevation = elevations[end];
  const slope = (elevations[end === 0 ? 1 : 0] - elevation) / length;
  const displaced = Math.min(runway.ends[end].displaced, length);
  return {
    runway,
    end,
    frame: frameAt(here),
    bearing: azimuth,
    east: Math.sin(azimuth * RAD),
    north: Math.cos(azimuth * RAD),
    length,
    displaced,
    slope,
    elevation,
    thresholdElevation: elevation + slope * displaced,
  };
}

/** m above mean sea level of the pavement `t` m from the end. */
export const pavementAt = (geometry: EndGeometry, t: number) => geometry.elevation + geometry.slope * t;

/** Where the centre is, and which way it flies, `t` m from the pavement end along the centreline and its extensions. */
export function onCentreline(
  geometry: EndGeometry,
  t: number,
  centreHeight: number,
): Pick<SampleState, 'centre' | 'forward' | 'up'> {
  const [x, y] = [t * geometry.east, t * geometry.north];
  return {
    centre: placed(geometry.frame, x, y, centreHeight),
    ...axesAt(geometry.frame, x, y, geometry.east, geometry.north),
  };
}

/** The plane ahead of a place on the centreline, `t` m from the pavement end, looking along the landing direction. */
export const planeFrom = ({ frame, east, north }: EndGeometry, t: number): Plane => ({
  frame,
  x: t * east,
  y: t * north,
  east,
  north,
});
