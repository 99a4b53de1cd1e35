import { destination } from '../../figures/geometry/earth';
import type { DevicePosition } from '../../figures/now/place-now';
import { point, polygon, type OverlayFeature } from './features';

const corners = 48;

/** Where the device says it is, and the circle within which it may as well be. */
export function hereFeatures(here: DevicePosition | null): readonly OverlayFeature[] {
  if (!here) return [];
  const { position, accuracy } = here;
  const ring = Array.from({ length: corners + 1 }, (_, i) =>
    destination(position, (i % corners) * (360 / corners), accuracy),
  );
  return [polygon([ring], { part: 'here-within' }), point(position, { part: 'here' })];
}
