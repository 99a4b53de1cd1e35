import { destination } from '../figures/geometry/earth';
import type { Survey } from '../survey/document';
import { duplicateFeature } from '../survey/edits/duplicate-feature';
import { shiftShape } from '../survey/edits/shift-shape';
import { shapeOf } from '../survey/edits/vertices';

/** How far beside it a copy is put, in m and degrees from true north: near, and never on top of it. */
const beside = { distance: 50, bearing: 135 } as const;

/** A copy of a feature some metres to its south-east; the same survey for a geometry that cannot be edited. */
export function duplicateBeside(survey: Survey, id: string, newId: string): Survey {
  const feature = survey.features.find((f) => f.id === id);
  const shape = feature ? shapeOf(feature) : null;
  if (!shape) return survey;
  const moved = shiftShape(shape, (position) => destination(position, beside.bearing, beside.distance));
  return duplicateFeature(survey, id, newId, moved);
}
