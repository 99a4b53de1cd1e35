import type { FlightPath } from '../../survey/schema/places';
import { RAD } from '../geometry/angles';
import { mapped } from '../geometry/earth';
import { pavementAt, type EndGeometry } from '../traffic/runway-geometry';

/** A recorded flight: the centre's heights in m above mean sea level; times in ms since 1970, null where none were recorded. */
export type RecordedFlight = Pick<FlightPath, 'id' | 'line' | 'heights' | 'times'>;

/** A recorded flight seen from a runway's end, looking along its landing direction; one entry a point, in flight order. */
export interface Track {
  readonly count: number;
  /** m from the pavement end, positive along the runway. */
  readonly along: Float64Array;
  /** m to the right of the landing direction. */
  readonly offset: Float64Array;
  /** m of the centre above the landing threshold, and above the pavement abeam (its nearer end beyond it). */
  readonly height: Float64Array;
  readonly low: Float64Array;
  /** Cosine of the angle between the flight and the landing direction, over some 200 m of it. */
  readonly course: Float64Array;
  /** m flown over the ground since the first point. */
  readonly flown: Float64Array;
  /** s since the first point; null where the flight has no times. */
  readonly seconds: Float64Array | null;
}

/** m of flight over which its direction is measured: less and the noise of positions turns it. CP. */
const courseOver = 200;

export function trackFrom(flight: RecordedFlight, geometry: EndGeometry): Track {
  const { line, heights, times } = flight;
  const count = line.length;
  const array = () => new Float64Array(count);
  const track = {
    count,
    along: array(),
    offset: array(),
    height: array(),
    low: array(),
    course: array(),
    flown: array(),
    seconds: times ? array() : null,
  };
  line.forEach((position, i) => {
    const [x, y] = mapped(geometry.frame, position);
    const t = x * geometry.east + y * geometry.north;
    const height = heights[i] as number;
    track.along[i] = t;
    track.offset[i] = x * geometry.north - y * geometry.east;
    track.height[i] = height - geometry.thresholdElevation;
    track.low[i] = height - pavementAt(geometry, Math.max(0, Math.min(geometry.length, t)));
    if (track.seconds && times) track.seconds[i] = ((times[i] as number) - (times[0] as number)) / 1000;
    // Measured on the runway's own map, which is true to a millionth within 100 km of it.
    const leg =
      i > 0
        ? Math.hypot(t - (track.along[i - 1] as number), track.offset[i] - (track.offset[i - 1] as number))
        : 0;
    track.flown[i] = (track.flown[i - 1] ?? 0) + leg;
  });
  setCourses(track);
  return track;
}

function setCourses({ count, along, offset, flown, course }: Track): void {
  let back = 0;
  let ahead = 0;
  for (let i = 0; i < count; i++) {
    const here = flown[i] as number;
    while (back < i && here - (flown[back + 1] as number) >= courseOver / 2) back++;
    while (ahead < count - 1 && (flown[ahead] as number) - here < courseOver / 2) ahead++;
    const dx = (along[ahead] as number) - (along[back] as number);
    const dy = (offset[ahead] as number) - (offset[back] as number);
    const length = Math.hypot(dx, dy);
    course[i] = length > 0 ? dx / length : 0;
  }
}

/** The same flight seen from the runway's other end; the map of the first one holds there as well. */
export function fromOtherEnd(
  track: Track,
  { length, thresholdElevation }: EndGeometry,
  other: EndGeometry,
): Track {
  return {
    ...track,
    along: track.along.map((t) => length - t),
    offset: track.offset.map((x) => -x),
    height: track.height.map((h) => h + thresholdElevation - other.thresholdElevation),
    course: track.course.map((c) => -c),
  };
}

/** Cosine within which a flight counts as being on the runway's line (5 degrees, design part two, section 12). */
export const onLine = Math.cos(5 * RAD);
