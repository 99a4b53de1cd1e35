import { paper, type LayerPiece } from '../../../styles/map-style';
import { layer } from './piece';

/** Where the device is: a ring with a dot, and the circle within which it may as well be. */
export const hereLayers: readonly LayerPiece[] = [
  layer('here-within', 'fill', 'places', 'here-within', {
    paint: { 'fill-color': paper.ink, 'fill-opacity': 0.1 },
  }),
  layer('here-edge', 'line', 'places', 'here-within', {
    paint: { 'line-color': paper.ink, 'line-width': 1.5 },
  }),
  layer('here-mark', 'circle', 'places', 'here', {
    paint: {
      'circle-radius': 9,
      'circle-color': paper.sheet,
      'circle-stroke-width': 2,
      'circle-stroke-color': paper.ink,
    },
  }),
  layer('here-dot', 'circle', 'places', 'here', {
    paint: { 'circle-radius': 4, 'circle-color': paper.ink },
  }),
];
