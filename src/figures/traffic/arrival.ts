import type { Subject } from '../../survey/schema/subject';
import { RAD } from '../geometry/angles';
import { noseAttitude, taxiSpeed } from '../practice';
import { onCentreline, pavementAt, type EndGeometry } from './runway-geometry';
import { sampled, stationsBetween, type PathSamples, type SampleState } from './samples';

/** m before the landing threshold at which an arrival begins. */
export const arrivalBegins = 10_000;

/** Stations of an arrival: m before (+) or beyond (-) the landing threshold. */
export interface ArrivalProfile {
  /** Where the wheels meet the ground, and where the aircraft leaves the runway. */
  readonly contact: number;
  readonly end: number;
  /** m of the wheels above mean sea level. */
  readonly wheelsAt: (station: number) => number;
  readonly glideSlope: number;
}

/** The subject's own word on glide angle and crossing height goes before the end's. */
export function arrivalProfile(geometry: EndGeometry, subject: Subject): ArrivalProfile {
  const { runway, end, slope, displaced, length, thresholdElevation } = geometry;
  const glideSlope = Math.tan((subject.approachAngle ?? runway.ends[end].glide) * RAD);
  const crossing = subject.crossingHeight ?? runway.ends[end].crossingHeight;
  const landingDistance = length - displaced;
  // The glide line sinks by glideSlope while the pavement rises by slope; it may not meet the pavement at all.
  const closing = glideSlope + slope;
  const flare = closing > 0 ? Math.min(crossing / closing, landingDistance) : landingDistance;
  const rollOut = Math.min(flare + subject.landingRun, landingDistance);
  return {
    contact: -flare,
    end: -rollOut,
    glideSlope,
    wheelsAt: (station) =>
      station >= -flare
        ? thresholdElevation + crossing + station * glideSlope
        : pavementAt(geometry, displaced - station),
  };
}

/** One station of an arrival: in the air before ground contact, rolling after it. */
export function arrivalState(
  geometry: EndGeometry,
  subject: Subject,
  profile: ArrivalProfile,
  station: number,
): SampleState {
  const airborne = station > profile.contact;
  const centreHeight = profile.wheelsAt(station) + subject.height / 2;
  return {
    ...onCentreline(geometry, geometry.displaced - station, centreHeight),
    slope: airborne ? -profile.glideSlope : geometry.slope,
    attitude: airborne ? (subject.approachAttitude ?? noseAttitude.approach) : noseAttitude.ground,
    height: centreHeight - geometry.thresholdElevation,
    speed: airborne ? subject.approachSpeed : rollingSpeed(subject, profile, station),
    onGround: !airborne,
  };
}

/** m/s on the roll-out: constant deceleration to taxi speed. */
function rollingSpeed(subject: Subject, { contact, end }: ArrivalProfile, station: number): number {
  const done = contact === end ? 0 : (contact - station) / (contact - end);
  const [v0, v1] = [subject.approachSpeed, Math.min(taxiSpeed, subject.approachSpeed)];
  return Math.sqrt(v0 * v0 + (v1 * v1 - v0 * v0) * done);
}

/** The straight-in arrival of one end, from 10 km out to the end of the roll-out. */
export function arrivalSamples(geometry: EndGeometry, subject: Subject): PathSamples {
  const profile = arrivalProfile(geometry, subject);
  return sampled(stationsBetween(arrivalBegins, profile.end), (station) =>
    arrivalState(geometry, subject, profile, station),
  );
}
