import { focalColour } from '../../../styles/ramps';
import type { DevicePosition } from '../../figures/now/place-now';
import type { DrawnPlaces } from '../../state/drawn-places.svelte';
import { decimal } from '../../units/format';
import { line, overlay, point, type Overlay } from './features';
import { hereFeatures } from './here';

/** Where one is, the places that are proposed, lines of equal focal length, and the place that somebody asks about. */
export const placesOverlay = (
  places: DrawnPlaces['places'],
  reach: DrawnPlaces['reach'],
  pointed: DrawnPlaces['pointed'],
  here: DevicePosition | null = null,
): Overlay =>
  overlay([
    ...hereFeatures(here),
    ...reach.flatMap(({ focalLength, lines }) =>
      lines.map((way) =>
        line(way, {
          part: 'reach',
          text: `${decimal(focalLength, 0)} mm`,
          colour: focalColour(focalLength, Infinity),
        }),
      ),
    ),
    ...places.map(({ position, number, checkFirst, marked }) =>
      point(position, { part: 'place', text: String(number), check: checkFirst, marked }),
    ),
    ...(pointed ? [point(pointed, { part: 'asked' })] : []),
  ]);
