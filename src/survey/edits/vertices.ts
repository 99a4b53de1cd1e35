import type { Position, SurveyFeature } from '../document';
import { readShape } from '../geometry';
import type { NewShape } from './add-feature';

/** Which vertex of a feature: ring 0 for points and lines. */
export interface VertexRef {
  readonly ring: number;
  readonly index: number;
}

/** A feature's geometry when it is one that can be edited. */
export function shapeOf(feature: SurveyFeature): NewShape | null {
  const shape = readShape(feature.geometry, ['Point', 'LineString', 'Polygon']);
  return shape.ok ? ({ type: shape.shape, coordinates: shape.coordinates } as NewShape) : null;
}

/** Every vertex of a line or an area, each once, ring after ring; a point has none to choose from. */
export function vertexRefs(feature: SurveyFeature): readonly VertexRef[] {
  const shape = shapeOf(feature);
  if (!shape || shape.type === 'Point') return [];
  const rings = shape.type === 'Polygon' ? shape.coordinates.map((r) => r.slice(0, -1)) : [shape.coordinates];
  return rings.flatMap((positions, ring) => positions.map((_, index) => ({ ring, index })));
}

/** The shape with one vertex elsewhere. The first and last position of a ring are one vertex. */
export function withVertexAt(shape: NewShape, { ring, index }: VertexRef, to: Position): NewShape {
  switch (shape.type) {
    case 'Point':
      return { type: 'Point', coordinates: to };
    case 'LineString':
      return { type: 'LineString', coordinates: shape.coordinates.map((p, i) => (i === index ? to : p)) };
    case 'Polygon':
      return {
        type: 'Polygon',
        coordinates: changeRing(shape.coordinates, ring, (open) => open.with(index % open.length, to)),
      };
  }
}

/** The shape with one vertex more, before `index`. */
export function withVertexAdded(shape: NewShape, { ring, index }: VertexRef, at: Position): NewShape {
  switch (shape.type) {
    case 'Point':
      return shape;
    case 'LineString':
      return { type: 'LineString', coordinates: shape.coordinates.toSpliced(index, 0, at) };
    case 'Polygon':
      return {
        type: 'Polygon',
        coordinates: changeRing(shape.coordinates, ring, (open) => open.toSpliced(index, 0, at)),
      };
  }
}

/** Why a vertex cannot be taken away, or null when it can. */
export function whyVertexStays(
  feature: SurveyFeature,
  { ring }: VertexRef,
): 'runway-has-two-ends' | 'too-few-vertices' | null {
  const shape = shapeOf(feature);
  if (!shape || shape.type === 'Point') return 'too-few-vertices';
  if (feature.properties?.['kind'] === 'runway') return 'runway-has-two-ends';
  if (shape.type === 'LineString') return shape.coordinates.length > 2 ? null : 'too-few-vertices';
  return (shape.coordinates[ring]?.length ?? 0) > 4 ? null : 'too-few-vertices';
}

export function withoutVertex(shape: NewShape, { ring, index }: VertexRef): NewShape {
  switch (shape.type) {
    case 'Point':
      return shape;
    case 'LineString':
      return { type: 'LineString', coordinates: shape.coordinates.toSpliced(index, 1) };
    case 'Polygon':
      return {
        type: 'Polygon',
        coordinates: changeRing(shape.coordinates, ring, (open) => open.toSpliced(index % open.length, 1)),
      };
  }
}

/** Changes one ring as a list of its corners, each once, and closes it again. */
function changeRing(
  rings: readonly (readonly Position[])[],
  ring: number,
  change: (open: Position[]) => Position[],
): readonly (readonly Position[])[] {
  return rings.map((corners, i) => {
    if (i !== ring) return corners;
    const open = change(corners.slice(0, -1));
    return [...open, open[0] as Position];
  });
}
