import { alongCurve } from './along-curve';
import { placesPerDegree } from './columns';
import { airfieldKinds, type Airfield } from './types';

type Placed = Pick<Airfield, 'kind' | 'region' | 'position'>;

const places = (deg: number) => Math.round(deg * placesPerDegree);

/** How far along the curve an airfield lies. */
export const alongOf = ({ position: [lng, lat] }: Pick<Airfield, 'position'>): number =>
  alongCurve([places(lng), places(lat)]);

/** By region, neighbours beside each other: the order of the file, in which what is alike lies near. */
export function inFileOrder<T extends Placed>(airfields: readonly T[]): T[] {
  const along = new Map(airfields.map((airfield) => [airfield, alongOf(airfield)]));
  return [...airfields].sort((a, b) =>
    a.region !== b.region ? (a.region < b.region ? -1 : 1) : (along.get(a) ?? 0) - (along.get(b) ?? 0),
  );
}

/** Larger kinds first, else as in the file: the order in which a search finds them. */
export function inCatalogueOrder<T extends Placed>(airfields: readonly T[]): T[] {
  const rank = ({ kind }: T) => airfieldKinds.indexOf(kind);
  return inFileOrder(airfields).sort((a, b) => rank(a) - rank(b));
}

/** For each place in the catalogue, the place in the file: airfields of one kind keep their order. */
export function fileOrderOf(kinds: Float64Array): Uint32Array {
  const next = new Uint32Array(airfieldKinds.length + 1);
  for (const kind of kinds) next[kind + 1] = (next[kind + 1] ?? 0) + 1;
  for (let kind = 1; kind < next.length; kind++) next[kind] = (next[kind] ?? 0) + (next[kind - 1] ?? 0);
  const order = new Uint32Array(kinds.length);
  for (const [place, kind] of kinds.entries()) {
    const listed = next[kind] ?? 0;
    order[listed] = place;
    next[kind] = listed + 1;
  }
  return order;
}
