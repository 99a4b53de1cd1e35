import type { Position, Survey } from '../document';
import { tidyPosition, windRings } from '../geometry';
import type { JsonObject } from '../json';
import type { Kind } from '../kinds';

export type NewShape =
  | { readonly type: 'Point'; readonly coordinates: Position }
  | { readonly type: 'LineString'; readonly coordinates: readonly Position[] }
  | { readonly type: 'Polygon'; readonly coordinates: readonly (readonly Position[])[] };

/** Coordinates as an edit writes them: 7 decimals, longitudes within +-180, rings wound as RFC 7946 asks. */
export function tidyShape(shape: NewShape): JsonObject {
  switch (shape.type) {
    case 'Point':
      return { type: 'Point', coordinates: tidyPosition(shape.coordinates) };
    case 'LineString':
      return { type: 'LineString', coordinates: shape.coordinates.map(tidyPosition) };
    case 'Polygon':
      return {
        type: 'Polygon',
        coordinates: windRings(shape.coordinates.map((ring) => ring.map(tidyPosition))),
      };
  }
}

/** Adds what was drawn. */
export function addFeature(
  survey: Survey,
  id: string,
  kind: Kind,
  shape: NewShape,
  properties: JsonObject,
): Survey {
  const feature = {
    type: 'Feature' as const,
    id,
    properties: { kind, ...properties },
    geometry: tidyShape(shape),
  };
  return { ...survey, features: [...survey.features, feature] };
}
