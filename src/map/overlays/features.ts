import type { Position } from '../../survey/document';

type Plain = string | number | boolean;
/** A list is one that an expression of a layer takes as it is. */
export type OverlayProperties = Readonly<Record<string, Plain | readonly (Plain | readonly Plain[])[]>>;

export type OverlayGeometry =
  | { readonly type: 'Point'; readonly coordinates: Position }
  | { readonly type: 'LineString'; readonly coordinates: readonly Position[] }
  | { readonly type: 'Polygon'; readonly coordinates: readonly (readonly Position[])[] };

/** GeoJSON for the map. `properties.part` says to the layers what a feature is. */
export interface OverlayFeature {
  readonly type: 'Feature';
  readonly properties: OverlayProperties;
  readonly geometry: OverlayGeometry;
}

export interface Overlay {
  readonly type: 'FeatureCollection';
  readonly features: readonly OverlayFeature[];
}

export const emptyOverlay: Overlay = { type: 'FeatureCollection', features: [] };

/** Of no features it is one and the same object: nothing that is empty and stays so is written to the map again. */
export const overlay = (features: readonly OverlayFeature[]): Overlay =>
  features.length === 0 ? emptyOverlay : { type: 'FeatureCollection', features };

export interface PointFeature extends OverlayFeature {
  readonly geometry: Extract<OverlayGeometry, { type: 'Point' }>;
}

export const point = (coordinates: Position, properties: OverlayProperties): PointFeature => ({
  type: 'Feature',
  properties,
  geometry: { type: 'Point', coordinates },
});

export const line = (coordinates: readonly Position[], properties: OverlayProperties): OverlayFeature => ({
  type: 'Feature',
  properties,
  geometry: { type: 'LineString', coordinates: unbroken(coordinates) },
});

export const polygon = (
  rings: readonly (readonly Position[])[],
  properties: OverlayProperties,
): OverlayFeature => ({
  type: 'Feature',
  properties,
  geometry: { type: 'Polygon', coordinates: rings.map(unbroken) },
});

/**
 * The survey keeps longitudes within +-180, so a line over the antimeridian jumps; the map wants it to run on, past
 * 180, or it draws it the long way round the world.
 */
function unbroken(positions: readonly Position[]): readonly Position[] {
  let before = positions[0]?.[0] ?? 0;
  if (!jumpsFrom(before, positions)) return positions;
  return positions.map(([lng, lat]): Position => {
    const near = lng + 360 * Math.round((before - lng) / 360);
    before = near;
    return [near, lat];
  });
}

/** A plain loop: most lines are drawn anew at every pointer move, and hardly any jumps. */
function jumpsFrom(lng: number, positions: readonly Position[]): boolean {
  for (let i = 0; i < positions.length; i++)
    if (Math.abs((positions[i] as Position)[0] - lng) > 180) return true;
  return false;
}
