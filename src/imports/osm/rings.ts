import booleanPointInPolygon from '@turf/boolean-point-in-polygon';
import type { Position } from '../../survey/document';
import { isClosed, samePlace } from './elements';

export interface Rings {
  readonly closed: readonly (readonly Position[])[];
  /** Pieces that make no ring: their other parts are not in the file. */
  readonly open: number;
}

const keyOf = ([lng, lat]: Position) => `${lng} ${lat}`;

/** Joins lines end to end to closed rings, whichever way each of them runs. */
export function joinRings(lines: readonly (readonly Position[])[]): Rings {
  const ends = new Map<string, number[]>();
  lines.forEach((line, i) => {
    if (isClosed(line)) return;
    for (const end of [line[0], line.at(-1)])
      if (end) ends.set(keyOf(end), [...(ends.get(keyOf(end)) ?? []), i]);
  });
  const used = new Set<number>();
  const closed: (readonly Position[])[] = [];
  let open = 0;
  lines.forEach((line, i) => {
    if (used.has(i)) return;
    used.add(i);
    if (isClosed(line)) return void closed.push(line);
    const ring = [...line];
    for (;;) {
      const last = ring.at(-1);
      if (!last || (ring.length > 3 && samePlace(ring[0], last))) break;
      const next = ends.get(keyOf(last))?.find((j) => !used.has(j));
      if (next === undefined) break;
      used.add(next);
      const more = lines[next] ?? [];
      ring.push(...(samePlace(more[0], last) ? more : [...more].reverse()).slice(1));
    }
    if (isClosed(ring)) closed.push(ring);
    else open++;
  });
  return { closed, open };
}

/** Each outer ring with the inner ones that lie in it. An inner ring in none of them is passed over. */
export function withHoles(
  outers: readonly (readonly Position[])[],
  inners: readonly (readonly Position[])[],
): readonly (readonly (readonly Position[])[])[] {
  const polygons = outers.map((outer) => [outer]);
  for (const inner of inners) {
    const place = inner.find((p) => !outers.some((outer) => outer.some((q) => samePlace(p, q)))) ?? inner[0];
    const home = polygons.find(([outer]) => outer && place && contains(outer, place));
    home?.push(inner);
  }
  return polygons;
}

const contains = (ring: readonly Position[], [lng, lat]: Position): boolean =>
  booleanPointInPolygon([lng, lat], { type: 'Polygon', coordinates: [ring.map(([x, y]) => [x, y])] });
