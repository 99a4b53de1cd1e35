import type { Survey } from '../document';
import { tidyShape, type NewShape } from './add-feature';
import { changeFeature } from './change-feature';

/** Gives a feature its new coordinates: after a drag, a nudge or typed numbers. */
export function reshapeFeature(survey: Survey, id: string, shape: NewShape): Survey {
  return changeFeature(survey, id, (feature) => {
    // A bounding box in the file would be wrong from here on.
    const { bbox: _stale, ...rest } = feature;
    return {
      ...rest,
      type: 'Feature',
      id,
      properties: feature.properties,
      geometry: { ...without(feature.geometry), ...tidyShape(shape) },
    };
  });
}

function without(geometry: Survey['features'][number]['geometry']) {
  if (!geometry) return {};
  const { bbox: _stale, ...rest } = geometry;
  return rest;
}
