import { paper, type LayerPiece } from '../../../styles/map-style';
import { always, layer, round } from './piece';

export const selectionLayers: readonly LayerPiece[] = [
  layer('selected-area', 'fill', 'live', 'selected-area', {
    paint: { 'fill-color': paper.signal, 'fill-opacity': 0.08 },
  }),
  layer('selected-line', 'line', 'live', ['selected-line', 'selected-area'], {
    layout: round,
    paint: { 'line-color': paper.signal, 'line-width': 2 },
  }),
  layer('drawn-line', 'line', 'live', 'drawn-line', {
    layout: round,
    paint: { 'line-color': paper.signal, 'line-width': 2 },
  }),
];

export const handleLayers: readonly LayerPiece[] = [
  layer('tick', 'symbol', 'live', 'tick', {
    layout: {
      'icon-image': 'tick',
      'icon-rotate': ['get', 'turn'],
      'icon-rotation-alignment': 'map',
      ...always,
    },
  }),
  layer('log-spot', 'circle', 'live', 'log-spot', {
    paint: {
      'circle-radius': 15,
      'circle-opacity': 0,
      'circle-stroke-color': paper.softInk,
      'circle-stroke-width': 1,
    },
  }),
  layer('log-mark', 'circle', 'live', 'log-mark', {
    paint: {
      'circle-radius': 3.5,
      'circle-color': paper.softInk,
      'circle-stroke-color': paper.casing,
      'circle-stroke-width': 1.2,
    },
  }),
  layer('closest', 'circle', 'live', 'closest', {
    paint: {
      'circle-radius': 5,
      'circle-color': paper.sheet,
      'circle-stroke-color': paper.ink,
      'circle-stroke-width': 1.8,
    },
  }),
  layer('best', 'symbol', 'live', 'best', { layout: { 'icon-image': 'best', ...always } }),
  layer('inspected', 'circle', 'live', 'inspected', {
    paint: {
      'circle-radius': 6.5,
      'circle-color': paper.sheet,
      'circle-opacity': 0.5,
      'circle-stroke-color': paper.signal,
      'circle-stroke-width': 2.4,
    },
  }),
  layer('midpoint', 'circle', 'live', 'midpoint', {
    paint: {
      'circle-radius': 4,
      'circle-color': paper.sheet,
      'circle-stroke-color': paper.signal,
      'circle-stroke-width': 1.2,
      'circle-opacity': 0.85,
    },
  }),
  layer('vertex', 'circle', 'live', ['vertex', 'drawn-vertex'], {
    paint: {
      'circle-radius': ['case', ['==', ['get', 'chosen'], true], 7.5, 5.5],
      'circle-color': ['case', ['==', ['get', 'chosen'], true], paper.signal, paper.sheet],
      'circle-stroke-color': paper.signal,
      'circle-stroke-width': 2.2,
    },
  }),
  layer('drawn-pointer', 'circle', 'live', 'drawn-pointer', {
    paint: { 'circle-radius': 4, 'circle-color': paper.signal },
  }),
];
