import type { FlightPath } from '../../survey/schema/places';
import type { RecordedFlight } from './track';

/** Recorded flights as bare lists, which go to a worker without being copied. Flight by flight, one after the other. */
export interface PackedFlights {
  readonly ids: readonly string[];
  /** Points of each. */
  readonly counts: Int32Array;
  /** Longitude and latitude in turn, in degrees. */
  readonly positions: Float64Array<ArrayBuffer>;
  /** m of the centre above mean sea level. */
  readonly heights: Float64Array<ArrayBuffer>;
  /** ms since 1970; those of a flight without times are not a number. */
  readonly times: Float64Array<ArrayBuffer>;
}

/** Whether somebody flew it: all that was not drawn by hand. */
export const isRecorded = ({ source }: Pick<FlightPath, 'source'>): boolean => source !== 'drawn';

/** Flight by flight, so that a page can breathe between them: each step is one of them. */
export function* packing(flights: readonly RecordedFlight[]): Generator<void, PackedFlights> {
  const counts = Int32Array.from(flights, ({ line }) => line.length);
  const all = counts.reduce((sum, n) => sum + n, 0);
  const positions = new Float64Array(2 * all);
  const heights = new Float64Array(all);
  const times = new Float64Array(all).fill(NaN);
  let at = 0;
  for (const flight of flights) {
    flight.line.forEach(([lng, lat], i) => {
      positions[2 * (at + i)] = lng;
      positions[2 * (at + i) + 1] = lat;
    });
    heights.set(flight.heights, at);
    if (flight.times) times.set(flight.times, at);
    at += flight.line.length;
    yield;
  }
  return { ids: flights.map(({ id }) => id), counts, positions, heights, times };
}

export function unpacked({
  ids,
  counts,
  positions,
  heights,
  times,
}: PackedFlights): readonly RecordedFlight[] {
  let at = 0;
  return ids.map((id, f) => {
    const [from, count] = [at, counts[f] as number];
    at += count;
    const own = times.subarray(from, at);
    return {
      id,
      line: Array.from({ length: count }, (_, i): [number, number] => [
        positions[2 * (from + i)] as number,
        positions[2 * (from + i) + 1] as number,
      ]),
      heights: Array.from(heights.subarray(from, at)),
      times: Number.isNaN(own[0]) ? null : Array.from(own),
    };
  });
}
