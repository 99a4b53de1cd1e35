import * as v from 'valibot';

const flownKinds = ['arrival', 'departure', 'circuit'] as const;

const metres = v.pipe(v.number(), v.minValue(-100_000), v.maxValue(100_000));
const band = v.tuple([metres, metres, metres]);
/** Stations of 6 km at 20 m. */
const mostStations = 301;

/**
 * What recorded flights have taught of one end: every `step` m from the station `from` on, the 10th, 50th and 90th
 * percentile of the height (m of the centre above the landing threshold) and of the offset (m to the right of the flight,
 * null where flights are not on the runway's line).
 */
const flownBand = v.pipe(
  v.object({
    kind: v.picklist(flownKinds),
    flights: v.pipe(v.number(), v.integer(), v.minValue(1)),
    from: metres,
    step: v.pipe(v.number(), v.minValue(1), v.maxValue(1000)),
    height: v.pipe(v.array(band), v.maxLength(mostStations)),
    offset: v.pipe(v.array(v.nullable(band)), v.maxLength(mostStations)),
  }),
  v.check(({ height, offset }) => height.length === offset.length, 'expected as many offsets as heights'),
);
export const flownField = v.nullish(v.pipe(v.array(flownBand), v.maxLength(flownKinds.length)), null);
export type FlownBand = v.InferOutput<typeof flownBand>;
