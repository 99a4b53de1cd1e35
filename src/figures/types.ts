import type { SkyThere } from './light/sky';
import type { Problem } from '../survey/problems';
import type { Lens } from '../survey/schema/kit';
import type { EndIndex } from '../survey/schema/runway';

export type LightClass = 'dark' | 'civil-twilight' | 'top-lit' | 'front-lit' | 'side-lit' | 'back-lit';

/** The sun as seen from a place. Degrees; azimuth from true north. */
export interface Sun {
  readonly azimuth: number;
  /** Apparent altitude of the centre, with standard refraction. */
  readonly altitude: number;
  /** Altitude of the centre without refraction. */
  readonly geometricAltitude: number;
}

export type Side = 'left' | 'right';

export interface EndFigures {
  readonly designator: string;
  /** Degrees from true north at this end, looking along its landing direction. */
  readonly trueBearing: number;
  readonly magneticBearing: number;
  readonly suggestedDesignator: string;
}

export interface RunwayFigures {
  readonly id: string;
  /** m between the pavement ends, WGS84. */
  readonly length: number;
  /** Degrees from true north at position 0. */
  readonly trueBearing: number;
  /** Degrees, east positive. */
  readonly declination: number;
  readonly ends: readonly [EndFigures, EndFigures];
}

/**
 * `pattern`: what else ends in a landing at a runway's end (a break, a circling approach); `pass`: what comes past and does
 * not (along a display line, at a helipad, behind a tug).
 */
export type PathKind =
  'arrival' | 'departure' | 'circuit' | 'flight-path' | 'taxi' | 'parked' | 'pattern' | 'pass';

/** Which path: a runway's end and what happens there, or something else of the survey that aircraft fly or roll along. */
export interface PathRef {
  /**
   * As the figures print it: "<runway id>/<designator>/arrival", the flight path's id, "<taxi route id>/forward" (in the
   * order of its positions) or ".../backward", the apron's id, "<runway id>/<designator>/break",
   * "<display line id>/topside/forward", "<helipad id>/240/approach".
   */
  readonly path: string;
  readonly kind: PathKind;
  readonly runway: string | null;
  readonly end: EndIndex | null;
}

export interface Score {
  readonly total: number;
  readonly light: number;
  readonly reach: number;
  readonly aspect: number;
  readonly sight: number;
  readonly haze: number;
}

/** One sample of a path as seen from a spot. m and degrees; bearing from true north; elevation above the horizontal at the eye. */
export interface Sample {
  readonly station: number;
  /** m of the aircraft's centre above the path's datum (threshold, start of the departure, or field elevation). */
  readonly height: number;
  /** Whether the wheels are on runway, taxi route or apron. */
  readonly onGround: boolean;
  readonly groundRange: number;
  readonly slantRange: number;
  /** Null, like the angles below, where the eye is at the aircraft's centre: it looks nowhere. */
  readonly bearing: number | null;
  readonly elevation: number | null;
  /** 0 nose-on, 90 side-on, 180 tail-on; null for a parked aircraft of unknown heading. */
  readonly aspect: number | null;
  /** m/s along the path; null where nobody knows: a recorded path without times. */
  readonly speed: number | null;
  /** mm needed on the chosen body, and the 35 mm equivalent by diagonal; null inside the aircraft. */
  readonly focalLength: number | null;
  readonly focalLength35: number | null;
  readonly lightAngle: number | null;
  readonly phaseAngle: number | null;
  readonly flankLit: boolean | null;
  readonly light: LightClass;
  /** The sun shines into the lens. */
  readonly glare: boolean;
  /** The sun is that near to the axis, hidden or not: the caution stands. */
  readonly sunNear: boolean;
  /** Id of the first obstacle on the line to the centre, or "terrain", where nothing of the aircraft is in sight. */
  readonly hiddenBy: string | null;
  readonly score: Score;
}

/** A stretch of a path on which nothing of the aircraft is in sight: stations in the order of flight. */
export interface HiddenStretch {
  readonly from: number;
  readonly to: number;
  /** Id of the first obstacle on the sight line, or "terrain". */
  readonly by: string;
  /** Index of the first and the last hidden sample. */
  readonly first: number;
  readonly last: number;
}

/** A path as seen from a spot in one moment. */
export interface PathFromSpot {
  readonly ref: PathRef;
  readonly closest: Sample;
  readonly best: Sample;
  /** The best usable sample in sight of aspect 30 to 120: what one waits for; null where there is none. */
  readonly pass: Sample | null;
  /** Shares of the usable horizontal length, 0 to 1; null without usable samples. Visible counts wheels, centre and fin tip. */
  readonly visibleShare: number | null;
  readonly glareShare: number | null;
  /** Over the whole path, usable or not. */
  readonly hidden: readonly HiddenStretch[];
  /** Ids of the mesh fences that one looks through at what is usable. */
  readonly through: readonly string[];
  readonly sector: Sector;
}

/** The bearings from a spot of a path's usable samples in sight, in the order in which the aircraft passes. */
export interface Sector {
  /** Runs of neighbouring samples, usable and in sight. */
  readonly runs: readonly SectorRun[];
}
export interface SectorRun {
  /** Index of the path's sample that the first entry is. */
  readonly from: number;
  /** Degrees from true north, one a sample. */
  readonly bearings: readonly number[];
  /** Degrees 0 to 180, one a sample. */
  readonly lightAngles: readonly number[];
  readonly glare: readonly boolean[];
  /** Needed focal length in mm, one a sample. */
  readonly focalLengths: readonly number[];
  /** Total of the score, 0 to 1, one a sample. */
  readonly totals: readonly number[];
}

export interface RunwayFromSpot {
  readonly id: string;
  readonly centrelineDistance: number;
  /** Seen from position 0 to position 1; null on the line. */
  readonly side: Side | null;
  /** The same side named by the compass: "south", "north-east" ...; null on the line. */
  readonly compassSide: string | null;
  readonly station: number;
}

export interface SpotFigures {
  readonly id: string;
  readonly name: string;
  readonly sun: Sun;
  readonly sky: SkyThere;
  /** m above mean sea level of the ground under the spot, and where that is from. */
  readonly ground: number;
  readonly groundFrom: 'stated' | 'terrain' | 'runway' | 'site';
  /** Id of the obstacle that hides the sun, or "terrain"; null when it is in sight or down. */
  readonly sunHiddenBy: string | null;
  readonly runways: readonly RunwayFromSpot[];
  readonly paths: readonly PathFromSpot[];
}

export interface Figures {
  readonly problems: readonly Problem[];
  readonly runways: readonly RunwayFigures[];
  readonly spots: readonly SpotFigures[];
}

/** The setting by which a lens is judged: alone or with one of its extenders, at a focal length. */
export interface TakenSetting {
  readonly lens: Lens;
  readonly extender: number | null;
  /** mm: that of the setting's range nearest to the needed one. */
  readonly focalLength: number;
  /** f-number, the extender counted in. */
  readonly widestAperture: number;
  /** Share of the frame that the subject fills then; above 1 some of it is cut off. */
  readonly fillAt: number;
}

/** What a lens makes of a needed focal length. */
export type Verdict = TakenSetting &
  (
    | { readonly verdict: 'fits' | 'tight' }
    | {
        readonly verdict: 'too-short';
        /** Share of the frame's width that is kept after cropping, 0 to 1. */
        readonly crop: number;
        /** Pixels left across the subject, or fewer where its height is what fills the frame (overhead, nose-on). */
        readonly pixelsAcross: number;
      }
    | {
        readonly verdict: 'too-long';
        /** Share of the subject that the frame cuts off. */
        readonly cutOff: number;
      }
  );

/** Which side of a runway is lit in one moment. */
export interface LitSide {
  readonly sun: Sun;
  /** Compass name of the lit side; null when the sun is down or along the runway. */
  readonly side: string | null;
  readonly why: 'lit' | 'sun-down' | 'along-runway';
}

/** A stretch of the day in which one side of a runway is lit. */
export interface LitSpan {
  readonly from: number;
  readonly to: number;
  readonly side: string;
}
