import { paper, type LayerPiece } from '../../../styles/map-style';
import { always, inked, label, layer, round } from './piece';

/** Lines of equal focal length, with their mm. */
export const reachLineLayers: readonly LayerPiece[] = [
  layer('reach-edge', 'line', 'places', 'reach', {
    layout: round,
    paint: { 'line-color': paper.casing, 'line-width': 4.5 },
  }),
  layer('reach', 'line', 'places', 'reach', {
    layout: round,
    paint: { 'line-color': ['get', 'colour'], 'line-width': 2.2 },
  }),
  layer('reach-label', 'symbol', 'places', 'reach', {
    layout: {
      'symbol-placement': 'line',
      'symbol-spacing': 220,
      'text-field': ['get', 'text'],
      ...label(12, true),
      'text-max-angle': 60,
    },
    paint: inked,
  }),
];

/** Places that are proposed, by their number in the list; hollow where somebody has to check first. */
export const placeMarkLayers: readonly LayerPiece[] = [
  layer('place-mark', 'circle', 'places', 'place', {
    paint: {
      'circle-radius': ['case', ['get', 'marked'], 15, 11],
      'circle-color': ['case', ['get', 'marked'], paper.signal, ['get', 'check'], paper.sheet, paper.ink],
      'circle-stroke-width': 2,
      'circle-stroke-color': ['case', ['get', 'check'], paper.ink, paper.sheet],
    },
  }),
  layer('place-number', 'symbol', 'places', 'place', {
    layout: {
      'text-field': ['get', 'text'],
      ...label(13, true),
      ...always,
      // Other words keep off its circle.
      'text-ignore-placement': false,
      'text-padding': 6,
    },
    paint: {
      'text-color': ['case', ['get', 'marked'], paper.sheet, ['get', 'check'], paper.ink, paper.sheet],
    },
  }),
  layer('place-asked', 'circle', 'places', 'asked', {
    paint: {
      'circle-radius': 6,
      'circle-color': paper.sheet,
      'circle-stroke-width': 2.5,
      'circle-stroke-color': paper.signal,
    },
  }),
];
