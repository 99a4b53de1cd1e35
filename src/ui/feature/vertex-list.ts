import type { Position } from '../../survey/document';
import type { NewShape } from '../../survey/edits/add-feature';
import type { VertexRef } from '../../survey/edits/vertices';

export interface Vertex {
  readonly ref: VertexRef;
  readonly position: Position;
  readonly label: string;
}

/** The vertices of a shape with their names; the first and last position of a ring are one corner. */
export function verticesOf(shape: NewShape, ends: readonly [string, string] | null): Vertex[] {
  switch (shape.type) {
    case 'Point':
      return [{ ref: { ring: 0, index: 0 }, position: shape.coordinates, label: 'Position' }];
    case 'LineString':
      return shape.coordinates.map((position, index) => ({
        ref: { ring: 0, index },
        position,
        label: (ends && index < 2 ? ends[index] : null) ?? `Point ${index + 1}`,
      }));
    case 'Polygon':
      return shape.coordinates.flatMap((ring, r) =>
        ring.slice(0, -1).map((position, index) => ({
          ref: { ring: r, index },
          position,
          label: r === 0 ? `Corner ${index + 1}` : `Hole ${r}, corner ${index + 1}`,
        })),
      );
  }
}
