import type { Subject } from '../../survey/schema/subject';
import { RAD } from '../geometry/angles';
import { placed } from '../geometry/earth';
import { circuitBank, noseAttitude } from '../practice';
import { arrivalProfile, arrivalState } from './arrival';
import { liftOff } from './departure';
import { pavementAt, type EndGeometry } from './runway-geometry';
import { axesAt, sampled, stationsBetween, type PathSamples, type SampleState } from './samples';

const foot = 0.3048;
const nauticalMile = 1852;
/** m abeam the runway on the downwind leg. */
const abeam = 0.75 * nauticalMile;
/** m below the circuit's height within which the crosswind turn may begin (FAA AIM 4-3-2). */
const crosswindBelow = 300 * foot;
const gravity = 9.80665;

/** m above the field (FAA AIM 4-3-3): 1000 ft, jets 1500 ft, helicopters 500 ft. */
export function circuitHeight(subject: Subject): number {
  return (subject.propulsion === 'jet' ? 1500 : subject.propulsion === 'rotor' ? 500 : 1000) * foot;
}

/** A leg or a corner of the circuit: `u` m beyond the landing threshold, `v` m to the circuit's side. */
interface Piece {
  readonly length: number;
  /** Position and unit direction `s` m into the piece. */
  readonly at: (s: number) => { u: number; v: number; du: number; dv: number };
}

function leg(u: number, v: number, du: number, dv: number, length: number): Piece {
  return { length, at: (s) => ({ u: u + du * s, v: v + dv * s, du, dv }) };
}

/** A quarter turn towards the circuit's side, entered at (u, v) in direction (du, dv). */
function corner(u: number, v: number, du: number, dv: number, radius: number): Piece {
  // Direction (1, 0) turns to (0, 1), (0, 1) to (-1, 0) and so on: v is measured towards the side of the turns.
  const [nu, nv] = [-dv, du];
  return {
    length: (radius * Math.PI) / 2,
    at: (s) => {
      const [sin, cos] = [Math.sin(s / radius), Math.cos(s / radius)];
      return {
        u: u + radius * (du * sin + nu * (1 - cos)),
        v: v + radius * (dv * sin + nv * (1 - cos)),
        du: du * cos + nu * sin,
        dv: dv * cos + nv * sin,
      };
    },
  };
}

/**
 * The circuit of one end: from lift-off along the extended runway, crosswind, downwind 0.75 NM abeam, base turn
 * where the threshold is 45 degrees behind, final, landing. Station: m still to fly to the landing threshold.
 * Stays level on the downwind until abeam the threshold, then sinks evenly to meet the arrival's glide path on final.
 */
export function circuitSamples(geometry: EndGeometry, subject: Subject, fieldElevation: number): PathSamples {
  const profile = arrivalProfile(geometry, subject);
  const top = fieldElevation + circuitHeight(subject);
  const radius = Math.min(subject.approachSpeed ** 2 / (gravity * Math.tan(circuitBank * RAD)), 0.45 * abeam);
  const run = liftOff(geometry, subject);
  const lifted = pavementAt(geometry, run);
  const climbed = Math.max(0, (top - crosswindBelow - lifted) / subject.climbGradient);
  const start = run - geometry.displaced;
  const turnAt = Math.max(start + climbed, geometry.length - geometry.displaced);
  const pieces: Piece[] = [
    leg(start, 0, 1, 0, turnAt - start),
    corner(turnAt, 0, 1, 0, radius),
    leg(turnAt + radius, radius, 0, 1, abeam - 2 * radius),
    corner(turnAt + radius, abeam - radius, 0, 1, radius),
    leg(turnAt, abeam, -1, 0, turnAt + abeam),
    corner(-abeam, abeam, -1, 0, radius),
    leg(-abeam - radius, abeam - radius, 0, -1, abeam - 2 * radius),
    corner(-abeam - radius, radius, 0, -1, radius),
    // The base turn began 0.75 NM out, and the turn on to final ends there: final is as long.
    leg(-abeam, 0, 1, 0, abeam),
  ];
  const total = pieces.reduce((sum, piece) => sum + piece.length, 0);
  const finalFrom = abeam;
  const descendFrom = finalFrom + (2 * (radius * Math.PI)) / 2 + (abeam - 2 * radius) + abeam;
  const sinkTo = Math.min(profile.wheelsAt(finalFrom), top);
  const wheelsAt = (station: number): { wheels: number; slope: number } => {
    if (station <= finalFrom) {
      const wheels = profile.wheelsAt(station);
      return wheels < top ? { wheels, slope: -profile.glideSlope } : { wheels: top, slope: 0 };
    }
    if (station <= descendFrom) {
      const slope = (top - sinkTo) / (descendFrom - finalFrom);
      return { wheels: sinkTo + slope * (station - finalFrom), slope: -slope };
    }
    const wheels = lifted + subject.climbGradient * (total - station);
    return wheels < top ? { wheels, slope: subject.climbGradient } : { wheels: top, slope: 0 };
  };
  const side = geometry.runway.ends[geometry.end].circuit === 'left' ? 1 : -1;

  return sampled(stationsBetween(total, profile.end), (station) => {
    if (station <= 0) return arrivalState(geometry, subject, profile, station);
    const { u, v, du, dv } = along(pieces, total - station);
    const { wheels, slope } = wheelsAt(station);
    return stateAt(geometry, subject, { u, v: side * v, du, dv: side * dv, wheels, slope });
  });
}

function along(pieces: readonly Piece[], distance: number) {
  let from = 0;
  for (const piece of pieces) {
    if (distance <= from + piece.length) return piece.at(Math.max(0, distance - from));
    from += piece.length;
  }
  const last = pieces[pieces.length - 1] as Piece;
  return last.at(last.length);
}

interface Place {
  readonly u: number;
  /** m to the left of the landing direction. */
  readonly v: number;
  readonly du: number;
  readonly dv: number;
  readonly wheels: number;
  readonly slope: number;
}

function stateAt(geometry: EndGeometry, subject: Subject, place: Place): SampleState {
  const { east, north, frame, displaced, thresholdElevation } = geometry;
  const t = place.u + displaced;
  // Left of (east, north) is (-north, east).
  const [x, y] = [t * east - place.v * north, t * north + place.v * east];
  const centreHeight = place.wheels + subject.height / 2;
  const climbing = place.slope > 0;
  return {
    centre: placed(frame, x, y, centreHeight),
    ...axesAt(frame, x, y, place.du * east - place.dv * north, place.du * north + place.dv * east),
    slope: place.slope,
    attitude: climbing
      ? (subject.climbAttitude ?? noseAttitude.climb)
      : (subject.approachAttitude ?? noseAttitude.approach),
    height: centreHeight - thresholdElevation,
    onGround: false,
    speed: climbing ? subject.climbSpeed : subject.approachSpeed,
  };
}
