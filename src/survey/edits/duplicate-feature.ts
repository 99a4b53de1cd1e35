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
  const { bbox: _stale, ...rest } = old;
  const copy = {
    ...rest,
    type: 'Feature' as const,
    id: newId,
    properties,
    geometry: { ...old.geometry, ...tidyShape(shape) },
  };
  return { ...survey, features: survey.features.toSpliced(index + 1, 0, copy) };
}
