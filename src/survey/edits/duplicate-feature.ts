import type { Survey } from '../document';
import { tidyShape, type NewShape } from './add-feature';

/** A copy of a feature beside it, under its own id, named so that the two can be told apart. */
export function duplicateFeature(survey: Survey, id: string, newId: string, shape: NewShape): Survey {
  const index = survey.features.findIndex((f) => f.id === id);
  const old = survey.features[index];
  if (!old) return survey;
  const name = old.properties?.['name'];
  const properties = {
    ...old.properties,
    ...(typeof name === 'string' && name !== '' ? { name: `${name} (copy)` } : {}),
  };
  // Bounding boxes in the file are those of the original.
  const { bbox: _stale, ...rest } = old;
  const { bbox: _staleToo, ...geometry } = old.geometry ?? {};
  const copy = {
    ...rest,
    type: 'Feature' as const,
    id: newId,
    properties,
    geometry: { ...geometry, ...tidyShape(shape) },
  };
  return { ...survey, features: survey.features.toSpliced(index + 1, 0, copy) };
}
