import type { Subject } from '../../survey/schema/subject';
import { noseAttitude } from '../practice';
import { onCentreline, pavementAt, type EndGeometry } from './runway-geometry';
import { sampled, stationsBetween, type PathSamples, type SampleState } from './samples';

/** m past the far pavement end at which a departure ends. */
export const departureEnds = 6000;

/** m from the pavement end to lift-off. */
export const liftOff = (geometry: EndGeometry, subject: Subject) =>
  Math.min(subject.groundRun, geometry.length);

/** One station of a departure: m from the pavement end, along the flight. */
export function departureState(geometry: EndGeometry, subject: Subject, station: number): SampleState {
  const run = liftOff(geometry, subject);
  const airborne = station > run;
  const wheels = airborne
    ? pavementAt(geometry, run) + subject.climbGradient * (station - run)
    : pavementAt(geometry, station);
  const centreHeight = wheels + subject.height / 2;
  return {
    ...onCentreline(geometry, station, centreHeight),
    slope: airborne ? subject.climbGradient : geometry.slope,
    attitude: airborne ? (subject.climbAttitude ?? noseAttitude.climb) : noseAttitude.ground,
    height: centreHeight - geometry.elevation,
    onGround: !airborne,
    // Constant acceleration from standstill to lift-off.
    speed: airborne || run === 0 ? subject.climbSpeed : subject.climbSpeed * Math.sqrt(station / run),
  };
}

/** The departure of one end: ground run from its pavement end, then straight ahead. */
export function departureSamples(geometry: EndGeometry, subject: Subject): PathSamples {
  return sampled(stationsBetween(0, geometry.length + departureEnds), (station) =>
    departureState(geometry, subject, station),
  );
}
