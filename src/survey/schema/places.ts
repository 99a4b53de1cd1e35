import type { Position } from '../document';
import {
  choiceField,
  flagField,
  notesField,
  numberField,
  numbersField,
  readFields,
  textField,
  type Read,
} from '../fields';
import type { JsonObject } from '../json';
import { sightKinds } from './sights';
import { readTimes } from './when';

type Doubt = (reason: string) => void;

const noGoFields = { name: textField(''), reason: notesField('') };
export interface NoGoArea extends Read<typeof noGoFields> {
  readonly id: string;
  readonly rings: readonly (readonly Position[])[];
}
export const readNoGoProperties = (p: JsonObject, doubt: Doubt) => readFields(noGoFields, p, '', doubt);

/** `heading`: degrees from true north that a parked aircraft faces, null when not known. */
const apronFields = { name: textField(''), heading: numberField(0, 360, null) };
export interface Apron extends Read<typeof apronFields> {
  readonly id: string;
  readonly rings: readonly (readonly Position[])[];
}
export interface TaxiRoute extends Read<typeof apronFields> {
  readonly id: string;
  readonly line: readonly Position[];
}
export const readApronProperties = (p: JsonObject, doubt: Doubt) => readFields(apronFields, p, '', doubt);

/**
 * `height`: m above `base`; `base`: m above mean sea level of its foot, null for the ground. `underside`: m above the
 * foot from which it hides; below one sees under it. `width`: m across of a line, null for what is usual of its sort.
 * `standOn`: a deck or a mound that one may stand on.
 */
const obstacleFields = {
  name: textField(''),
  height: numberField(0, 1000, 3),
  base: numberField(-500, 9000, null),
  sight: choiceField(sightKinds, 'solid'),
  underside: numberField(0, 1000, 0),
  width: numberField(0, 100, null),
  leafMonths: numbersField(1, 12),
  /** What the height of one that was brought in rests on; null for the user's own word. */
  heightFrom: choiceField(['map', 'levels', 'assumed'], null),
  standOn: flagField(false),
};
export interface Obstacle extends Read<typeof obstacleFields> {
  readonly id: string;
  readonly rings: readonly (readonly Position[])[];
  readonly line: readonly Position[];
}
export function readObstacleProperties(p: JsonObject, doubt: Doubt) {
  const fields = readFields(obstacleFields, p, '', doubt);
  if (fields.underside === 0 || fields.underside < fields.height) return fields;
  doubt(
    `underside: ${fields.underside} m is not below the top at ${fields.height} m; it hides down to its foot`,
  );
  return { ...fields, underside: 0 };
}

/**
 * `heights`: m above mean sea level of the wheels (drawn) or the centre (recorded), one a position. `turnBank`: degrees
 * of bank by which a drawn path is rounded at its waypoints; null for one that runs straight from corner to corner.
 * `fromSpots`: whether a recorded one is looked at from the spots; null while nobody has chosen.
 */
const flightPathFields = {
  name: textField(''),
  heights: numbersField(-1000, 30_000),
  source: textField('drawn'),
  turnBank: numberField(1, 75, null),
  fromSpots: flagField(null),
};
export interface FlightPath extends Read<typeof flightPathFields> {
  readonly id: string;
  readonly line: readonly Position[];
  /** ms since 1970 of each position, none before the one ahead of it; null where they are not known. */
  readonly times: readonly number[] | null;
}
export const readFlightPathProperties = (p: JsonObject, positions: number, doubt: Doubt) => ({
  ...readFields(flightPathFields, p, '', doubt),
  times: readTimes(p['times'], positions, doubt),
});

export const groundUses = [
  'road',
  'path',
  'parking',
  'green',
  'water',
  'rail',
  'motorway',
  'aerodrome',
  'building',
] as const;
export type Use = (typeof groundUses)[number];

/**
 * A road, path, parking place or public green; water, rail and motorway, where nobody may stand; the outline of the
 * aerodrome; the footprint of a building whose height nobody knows: it hides nothing, and nobody stands in it. `access`: what the map it came from says of people on foot, in the
 * words of a spot's access record.
 */
const groundUseFields = {
  name: textField(''),
  use: choiceField(groundUses, 'road'),
  access: choiceField(['public', 'permitted', 'ask', 'forbidden', 'unknown'], 'unknown'),
};
export interface GroundUse extends Read<typeof groundUseFields> {
  readonly id: string;
  readonly rings: readonly (readonly Position[])[];
  readonly line: readonly Position[];
}
export const readGroundUseProperties = (p: JsonObject, doubt: Doubt) =>
  readFields(groundUseFields, p, '', doubt);
