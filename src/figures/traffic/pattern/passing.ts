import { sampled, stationsBetween, type PathSamples } from '../samples';
import { onTrack, type Plane } from './on-track';
import { rolledIn } from './rolled-in';
import type { Track } from './track';

/** How a track is flown, by the m along it. Heights: m of the centre above mean sea level; m/s; degrees. */
export interface Flight {
  readonly heightAt: (way: number) => number;
  readonly speedAt: (way: number) => number;
  readonly attitudeAt: (slope: number, speed: number) => number;
  readonly onGround?: (way: number) => boolean;
}

/** m to either side over which the slope of a flight is taken. */
const slopeReach = 1;

/** A pass along a track; stations in m from its beginning. `datum`: m above mean sea level that heights count from. */
export function passSamples(
  plane: Plane,
  track: Track,
  datum: number,
  { heightAt, speedAt, attitudeAt, onGround }: Flight,
): PathSamples {
  return rolledIn(
    sampled(stationsBetween(0, track.length), (station) => {
      const height = heightAt(station);
      const speed = speedAt(station);
      const slope = (heightAt(station + slopeReach) - heightAt(station - slopeReach)) / (2 * slopeReach);
      return {
        ...onTrack(plane, track.at(station), height, speed),
        slope,
        attitude: attitudeAt(slope, speed),
        height: height - datum,
        speed,
        onGround: onGround?.(station) ?? false,
      };
    }),
  );
}
