import { groundLine } from '../figures/geometry/earth';
import type { Position } from '../survey/document';
import { isObject, type Json } from '../survey/json';

/** m between the vertices of two geometries that lie farthest apart, in their order; null where they differ in number. */
export function farthest(mine: Json | undefined, theirs: Json | undefined): number | null {
  const [m, t] = [positionsOf(mine), positionsOf(theirs)];
  if (m.length === 0 || m.length !== t.length) return null;
  return Math.max(...m.map((position, i) => groundLine(position, t[i] as Position).distance));
}

const positionsOf = (geometry: Json | undefined): readonly Position[] =>
  isObject(geometry) ? positionsIn(geometry['coordinates']) : [];

function positionsIn(value: Json | undefined): readonly Position[] {
  if (!Array.isArray(value)) return [];
  const [lng, lat] = value as readonly Json[];
  if (typeof lng === 'number' && typeof lat === 'number') return [[lng, lat]];
  return (value as readonly Json[]).flatMap(positionsIn);
}
