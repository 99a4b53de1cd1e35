import * as v from 'valibot';
import { boundedNumber } from '../fields';

const flownKinds = ['arrival', 'departure', 'circuit'] as const;

const list = (what: string) => `expected a list of ${what}`;
const metres = boundedNumber(-100_000, 100_000, 'm');
const percentiles = 'expected the 10th, 50th and 90th percentile in m';
const band = v.tuple([metres, metres, metres], percentiles);
/** Stations of 6 km at 20 m. */
const mostStations = 301;
const tooMany = `expected at most ${mostStations} stations`;

/**
 * What recorded flights have taught of one end: every `step` m from the station `from` on, the 10th, 50th and 90th
 * percentile of the height (m of the centre above the landing threshold) and of the offset (m to the right of the flight,
 * null where flights are not on the runway's line).
 */
const flownBand = v.pipe(
  v.object(
    {
      kind: v.picklist(flownKinds, `expected one of ${flownKinds.join(', ')}`),
      flights: v.pipe(boundedNumber(1, 1_000_000), v.integer('expected a whole number of flights')),
      from: metres,
      step: boundedNumber(1, 1000, 'm'),
      height: v.pipe(v.array(band, list('heights')), v.maxLength(mostStations, tooMany)),
      offset: v.pipe(v.array(v.nullable(band), list('offsets')), v.maxLength(mostStations, tooMany)),
    },
    'expected {kind, flights, from, step, height, offset}',
  ),
  v.check(({ height, offset }) => height.length === offset.length, 'expected as many offsets as heights'),
);
export const flownField = v.nullish(
  v.pipe(
    v.array(flownBand, list('{kind, flights, from, step, height, offset}')),
    v.maxLength(flownKinds.length, `expected at most ${flownKinds.length}, one a kind`),
  ),
  null,
);
export type FlownBand = v.InferOutput<typeof flownBand>;
