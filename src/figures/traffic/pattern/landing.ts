import type { Subject } from '../../../survey/schema/subject';
import { arrivalProfile, arrivalState } from '../arrival';
import { flightAttitude } from '../nose-attitude';
import { planeFrom, type EndGeometry } from '../runway-geometry';
import { sampled, stationsBetween, type PathSamples } from '../samples';
import { onTrack } from './on-track';
import { rolledIn } from './rolled-in';
import type { Track } from './track';

/** How somebody comes to land: `toFly` is m still to fly to the landing threshold. Wheels in m above mean sea level, m/s. */
export interface Landing {
  /** Ends over the threshold; told from there, ahead being the landing direction. */
  readonly track: Track;
  readonly wheelsAt: (toFly: number) => number;
  readonly speedAt: (toFly: number) => number;
}

/** m to either side over which the slope of a flight is taken. */
const slopeReach = 1;

/** Flown down to the threshold, then the end's own landing. Station: m still to fly to the threshold. */
export function landingSamples(
  geometry: EndGeometry,
  subject: Subject,
  { track, wheelsAt, speedAt }: Landing,
): PathSamples {
  const profile = arrivalProfile(geometry, subject);
  const plane = planeFrom(geometry, geometry.displaced);
  return rolledIn(
    sampled(stationsBetween(track.length, profile.end), (station) => {
      if (station <= 0) return arrivalState(geometry, subject, profile, station);
      const height = wheelsAt(station) + subject.height / 2;
      const speed = speedAt(station);
      const slope = (wheelsAt(station - slopeReach) - wheelsAt(station + slopeReach)) / (2 * slopeReach);
      return {
        ...onTrack(plane, track.at(track.length - station), height, speed),
        slope,
        attitude: flightAttitude(subject, slope, speed),
        height: height - geometry.thresholdElevation,
        speed,
        onGround: false,
      };
    }),
  );
}
