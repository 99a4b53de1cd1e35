import { Memo } from '../survey/memo';
import type { EndIndex, Runway } from '../survey/schema/runway';
import { shortestRunway } from './geometry/along-runway';
import { suggestedDesignator } from './geometry/designator';
import { groundLine } from './geometry/earth';
import { wrap360 } from './geometry/angles';
import { declination } from './geometry/magnetic';
import type { RunwayFigures } from './types';

const kept = new Memo<RunwayFigures | null>();

/**
 * Length, bearings and the designators that follow from them; null for a runway under 1 m. Bearings are geodesic
 * azimuths (WGS84) at each end; declination by the World Magnetic Model at position 0, the field's `elevation` (m above mean sea level) and
 * the instant (ms since 1970, UTC).
 */
export const runwayFigures = (runway: Runway, elevation: number, instant: number): RunwayFigures | null =>
  kept.get([runway, elevation, instant], () => figuresOf(runway, elevation, instant));

function figuresOf(runway: Runway, elevation: number, instant: number): RunwayFigures | null {
  const [a, b] = runway.line;
  const there = groundLine(a, b);
  const back = groundLine(b, a);
  if (there.azimuth === null || back.azimuth === null || there.distance < shortestRunway) return null;
  const variation = declination(a, elevation, instant);
  const end = (index: EndIndex, trueBearing: number) => {
    const magneticBearing = wrap360(trueBearing - variation);
    return {
      designator: runway.ends[index].designator,
      trueBearing,
      magneticBearing,
      suggestedDesignator: suggestedDesignator(magneticBearing),
    };
  };
  return {
    id: runway.id,
    length: there.distance,
    trueBearing: there.azimuth,
    declination: variation,
    ends: [end(0, there.azimuth), end(1, back.azimuth)],
  };
}
