import type { VertexRef } from '../../survey/edits/vertices';
import { pickLayers } from '../layers';
import type { MapHit, MapPointer, MapSurface } from '../map-surface';

/** What is under the pointer. */
export type Picked =
  | { readonly what: 'vertex' | 'midpoint'; readonly id: string; readonly vertex: VertexRef }
  | { readonly what: 'feature'; readonly id: string; readonly isSpot: boolean }
  | { readonly what: 'path'; readonly path: string };

/** Pixels round the pointer: a finger is less exact than a mouse. */
export const tolerance = (kind: MapPointer['kind']): number => (kind === 'mouse' ? 5 : 16);

const text = (value: unknown): string => (typeof value === 'string' ? value : '');
const number = (value: unknown): number => (typeof value === 'number' ? value : 0);

/** The first thing that the user can mean; paths only when they can be inspected. */
export function pick(
  surface: Pick<MapSurface, 'query'>,
  { pixel, kind }: MapPointer,
  withPaths: boolean,
): Picked | null {
  const hit = (layers: readonly string[]): MapHit | undefined =>
    surface.query(pixel, tolerance(kind), layers)[0];
  for (const what of ['vertex', 'midpoint'] as const) {
    const handle = hit(pickLayers[what])?.properties;
    if (handle && handle['part'] === what) {
      const vertex = { ring: number(handle['ring']), index: number(handle['index']) };
      return { what, id: text(handle['id']), vertex };
    }
  }
  const spot = hit(pickLayers.spot);
  if (spot) return { what: 'feature', id: text(spot.properties['id']), isSpot: true };
  const path = withPaths ? hit(pickLayers.path) : undefined;
  if (path) return { what: 'path', path: text(path.properties['path']) };
  const ground = hit(pickLayers.ground);
  return ground ? { what: 'feature', id: text(ground.properties['id']), isSpot: false } : null;
}
