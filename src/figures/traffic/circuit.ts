import type { Subject } from '../../survey/schema/subject';
import { circuitBank } from '../practice';
import { arrivalProfile, arrivalState } from './arrival';
import { liftOff } from './departure';
import { noseAttitudeOf } from './nose-attitude';
import { onTrack } from './pattern/on-track';
import { rolledIn } from './pattern/rolled-in';
import { trackOf, type Step } from './pattern/track';
import { pavementAt, planeFrom, type EndGeometry } from './runway-geometry';
import { sampled, stationsBetween, type PathSamples } from './samples';
import { turnRadius } from './turn-physics';

const foot = 0.3048;
const nauticalMile = 1852;
/** m abeam the runway on the downwind leg. */
const abeam = 0.75 * nauticalMile;
/** m below the circuit's height within which the crosswind turn may begin (FAA AIM 4-3-2). */
const crosswindBelow = 300 * foot;

/** m above the field (FAA AIM 4-3-3): 1000 ft, jets 1500 ft, helicopters 500 ft. */
export function circuitHeight(subject: Subject): number {
  return (subject.propulsion === 'jet' ? 1500 : subject.propulsion === 'rotor' ? 500 : 1000) * foot;
}

/**
 * The circuit of one end: from lift-off along the extended runway, crosswind, downwind 0.75 NM abeam, base turn
 * where the threshold is 45 degrees behind, final, landing. Station: m still to fly to the landing threshold.
 * Stays level on the downwind until abeam the threshold, then sinks evenly to meet the arrival's glide path on final.
 */
export function circuitSamples(geometry: EndGeometry, subject: Subject, fieldElevation: number): PathSamples {
  const profile = arrivalProfile(geometry, subject);
  const top = fieldElevation + circuitHeight(subject);
  const radius = Math.min(turnRadius(subject.approachSpeed, circuitBank), 0.45 * abeam);
  const run = liftOff(geometry, subject);
  const lifted = pavementAt(geometry, run);
  const climbed = Math.max(0, (top - crosswindBelow - lifted) / subject.climbGradient);
  const start = run - geometry.displaced;
  const turnAt = Math.max(start + climbed, geometry.length - geometry.displaced);
  const side = geometry.runway.ends[geometry.end].circuit === 'left' ? 1 : -1;
  const corner: Step = { turn: side * 90, radius };
  const track = trackOf({ u: start, v: 0, du: 1, dv: 0 }, [
    { ahead: turnAt - start },
    corner,
    { ahead: abeam - 2 * radius },
    corner,
    { ahead: turnAt + abeam },
    corner,
    { ahead: abeam - 2 * radius },
    corner,
    // The base turn began 0.75 NM out, and the turn on to final ends there: final is as long.
    { ahead: abeam },
  ]);
  const total = track.length;
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
  const plane = planeFrom(geometry, geometry.displaced);

  return rolledIn(
    sampled(stationsBetween(total, profile.end), (station) => {
      if (station <= 0) return arrivalState(geometry, subject, profile, station);
      const { wheels, slope } = wheelsAt(station);
      const centreHeight = wheels + subject.height / 2;
      const climbing = slope > 0;
      const speed = climbing ? subject.climbSpeed : subject.approachSpeed;
      return {
        ...onTrack(plane, track.at(total - station), centreHeight, speed),
        slope,
        attitude: noseAttitudeOf(subject, slope),
        height: centreHeight - geometry.thresholdElevation,
        onGround: false,
        speed,
      };
    }),
  );
}
