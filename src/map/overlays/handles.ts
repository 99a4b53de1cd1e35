import type { Position, SurveyFeature } from '../../survey/document';
import { shapeOf, type VertexRef } from '../../survey/edits/vertices';
import type { NewShape } from '../../survey/edits/add-feature';
import { line, point, polygon, type OverlayFeature } from './features';

/** The selected feature in the signal colour, with a handle at each vertex and, to add one, between two. */
export function handlesOf(selected: SurveyFeature | null, chosen: VertexRef | null): OverlayFeature[] {
  const shape = selected && shapeOf(selected);
  if (!selected || !shape || shape.type === 'Point') return [];
  const { id } = selected;
  const outline =
    shape.type === 'LineString'
      ? line(shape.coordinates, { part: 'selected-line', id })
      : polygon(shape.coordinates, { part: 'selected-area', id });
  const grows = canGrow(selected);
  const handles = cornersOf(shape).flatMap(({ positions, ring, closed }) => [
    ...(grows ? midpoints(positions, ring, closed, id) : []),
    ...positions.map((position, index) =>
      point(position, {
        part: 'vertex',
        id,
        ring,
        index,
        chosen: chosen?.ring === ring && chosen.index === index,
      }),
    ),
  ]);
  return [outline, ...handles];
}

/** A runway has two ends; a flight path has a height for each of its positions. */
const canGrow = ({ properties }: SurveyFeature): boolean =>
  properties?.['kind'] !== 'runway' && properties?.['kind'] !== 'flight-path';

interface Corners {
  /** Each corner once. */
  readonly positions: readonly Position[];
  readonly ring: number;
  readonly closed: boolean;
}

function cornersOf(shape: NewShape): readonly Corners[] {
  switch (shape.type) {
    case 'Point':
      return [];
    case 'LineString':
      return [{ positions: shape.coordinates, ring: 0, closed: false }];
    case 'Polygon':
      return shape.coordinates.map((ring, i) => ({ positions: ring.slice(0, -1), ring: i, closed: true }));
  }
}

/** `index` is that of the vertex that would be added. */
function midpoints(
  positions: readonly Position[],
  ring: number,
  closed: boolean,
  id: string,
): OverlayFeature[] {
  const legs = closed ? positions.length : positions.length - 1;
  return Array.from({ length: legs }, (_, i) => {
    const [x0, y0] = positions[i] as Position;
    const [x1, y1] = positions[(i + 1) % positions.length] as Position;
    const over = x1 - x0 > 180 ? -360 : x1 - x0 < -180 ? 360 : 0;
    return point([(x0 + x1 + over) / 2, (y0 + y1) / 2], { part: 'midpoint', id, ring, index: i + 1 });
  });
}
