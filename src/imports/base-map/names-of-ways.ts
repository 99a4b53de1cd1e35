import type { BaseFeature } from '../../survey/base-found';
import type { NewShape } from '../../survey/edits/add-feature';
import { shapesOf } from './shapes-of';

/**
 * What ways are called: the tiles have names in a layer of their own, along the same corners. A way has the name of the
 * most of its corners, if that is at least two.
 */
export function namesOfWays(features: readonly BaseFeature[]): (shape: NewShape) => string {
  const at = new Map<string, Set<string>>();
  for (const { layer, properties, geometry } of features) {
    const name = properties['name'] ?? properties['ref'];
    if (layer !== 'transportation_name' || typeof name !== 'string' || name === '') continue;
    for (const shape of shapesOf(geometry))
      for (const corner of cornersOf(shape)) at.set(corner, (at.get(corner) ?? new Set()).add(name));
  }
  return (shape) => {
    const counts = new Map<string, number>();
    for (const corner of cornersOf(shape))
      for (const name of at.get(corner) ?? []) counts.set(name, (counts.get(name) ?? 0) + 1);
    const [most] = [...counts].sort(([, a], [, b]) => b - a);
    return most && most[1] >= 2 ? most[0] : '';
  };
}

const cornersOf = (shape: NewShape): readonly string[] =>
  shape.type === 'LineString' ? shape.coordinates.map(([lng, lat]) => `${lng},${lat}`) : [];
