import type { Position } from '../document';
import type { NewShape } from './add-feature';

/** Every position of a shape put through `move`: the caller knows how far in metres that is. */
export function shiftShape(shape: NewShape, move: (position: Position) => Position): NewShape {
  switch (shape.type) {
    case 'Point':
      return { type: 'Point', coordinates: move(shape.coordinates) };
    case 'LineString':
      return { type: 'LineString', coordinates: shape.coordinates.map(move) };
    case 'Polygon':
      return { type: 'Polygon', coordinates: shape.coordinates.map((ring) => ring.map(move)) };
  }
}
