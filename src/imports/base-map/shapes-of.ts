import type { BaseFeature } from '../../survey/base-found';
import type { Position } from '../../survey/document';
import type { NewShape } from '../../survey/edits/add-feature';

/** The lines and areas of a geometry, one by one; points, and what is broken, are none. */
export function shapesOf({ type, coordinates }: BaseFeature['geometry']): readonly NewShape[] {
  switch (type) {
    case 'LineString':
      return lines([coordinates]);
    case 'MultiLineString':
      return Array.isArray(coordinates) ? lines(coordinates) : [];
    case 'Polygon':
      return areas([coordinates]);
    case 'MultiPolygon':
      return Array.isArray(coordinates) ? areas(coordinates) : [];
    default:
      return [];
  }
}

const lines = (all: readonly unknown[]): readonly NewShape[] =>
  all.flatMap((line): NewShape[] => {
    const coordinates = chainOf(line);
    return coordinates.length >= 2 ? [{ type: 'LineString', coordinates }] : [];
  });

const areas = (all: readonly unknown[]): readonly NewShape[] =>
  all.flatMap((area): NewShape[] => {
    const rings = (Array.isArray(area) ? (area as readonly unknown[]) : []).map(chainOf);
    return (rings[0]?.length ?? 0) >= 4
      ? [{ type: 'Polygon', coordinates: rings.filter(({ length }) => length >= 4) }]
      : [];
  });

const round = (degrees: number): number => Math.round(degrees * 1e7) / 1e7;

/** Positions as a survey has them, none twice in a row: tiles have them on a grid. */
function chainOf(chain: unknown): readonly Position[] {
  const out: Position[] = [];
  for (const place of Array.isArray(chain) ? (chain as readonly unknown[]) : []) {
    const [lng, lat] = Array.isArray(place) ? (place as readonly unknown[]) : [];
    if (typeof lng !== 'number' || typeof lat !== 'number') continue;
    const [x, y] = [round(lng), round(lat)];
    const last = out.at(-1);
    if (!last || last[0] !== x || last[1] !== y) out.push([x, y]);
  }
  return out;
}
