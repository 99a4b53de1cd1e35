import { wrap180 } from '../figures/geometry/angles';
import type { Position } from '../survey/document';
import type { NewShape } from '../survey/edits/add-feature';

/** The mean of a shape's corners (of an area's outer ring), also across the antimeridian. */
export function middleOf(shape: NewShape): Position {
  if (shape.type === 'Point') return shape.coordinates;
  const corners = shape.type === 'LineString' ? shape.coordinates : (shape.coordinates[0] ?? []).slice(0, -1);
  const [first] = corners;
  if (!first) throw new Error('expected a shape with corners');
  const east = corners.reduce((sum, [lng]) => sum + wrap180(lng - first[0]), 0) / corners.length;
  const north = corners.reduce((sum, [, lat]) => sum + lat - first[1], 0) / corners.length;
  return [wrap180(first[0] + east), first[1] + north];
}
