import { paper, type LayerPiece } from '../../../styles/map-style';
import { layer, round } from './piece';

export const pathLayers: readonly LayerPiece[] = [
  layer('flown-band', 'fill', 'paths', 'flown-band', {
    paint: { 'fill-color': paper.softInk, 'fill-opacity': 0.2 },
  }),
  layer('flown-band-edge', 'line', 'paths', 'flown-band', {
    paint: { 'line-color': paper.softInk, 'line-width': 1, 'line-dasharray': [3, 3] },
  }),
  layer('path-plain', 'line', 'paths', 'way', {
    only: ['get', 'plain'],
    layout: round,
    paint: { 'line-color': paper.ink, 'line-width': 1.1, 'line-opacity': 0.75 },
  }),
  layer('path-edge', 'line', 'paths', 'path', {
    only: ['get', 'reach'],
    layout: { 'line-cap': 'butt', 'line-join': 'round' },
    paint: { 'line-color': paper.casing, 'line-width': 7 },
  }),
  layer('path-far', 'line', 'paths', 'path', {
    only: ['!', ['get', 'reach']],
    paint: { 'line-color': ['get', 'colour'], 'line-width': 1.8 },
  }),
  layer('path', 'line', 'paths', 'path', {
    only: ['get', 'reach'],
    layout: { 'line-cap': 'butt', 'line-join': 'round' },
    paint: { 'line-color': ['get', 'colour'], 'line-width': 4.5 },
  }),
  layer('path-hidden', 'line', 'paths', 'path-hidden', {
    layout: { 'line-cap': 'butt', 'line-join': 'round' },
    paint: {
      'line-color': paper.softInk,
      'line-width': 1.4,
      'line-opacity': 0.65,
      'line-dasharray': [2.5, 3],
    },
  }),
  layer('path-way', 'symbol', 'paths', 'way', {
    layout: {
      'symbol-placement': 'line',
      'symbol-spacing': 150,
      'icon-image': 'chevron',
      'icon-rotation-alignment': 'map',
      'icon-allow-overlap': true,
      'icon-ignore-placement': true,
    },
  }),
];
