import { paper, type LayerPiece } from '../../../styles/map-style';
import { grows, layer, round } from './piece';

/** Where people go: faint, under all that the survey itself says. What is closed to people on foot is dashed. */
export const useLayers: readonly LayerPiece[] = [
  layer('use-area', 'fill', 'use', 'use', {
    // The outline of the aerodrome would lie over all that is within it: it is an edge only.
    only: ['all', ['==', ['geometry-type'], 'Polygon'], ['!=', ['get', 'use'], 'aerodrome']],
    paint: {
      'fill-color': [
        'match',
        ['get', 'use'],
        'green',
        paper.green,
        'water',
        paper.water,
        'building',
        paper.hairline,
        paper.road,
      ],
      'fill-opacity': 0.7,
    },
  }),
  layer('use-road', 'line', 'use', 'use', {
    only: [
      'all',
      ['in', ['get', 'use'], ['literal', ['road', 'motorway']]],
      ['!=', ['get', 'access'], 'forbidden'],
    ],
    layout: round,
    paint: { 'line-color': paper.road, 'line-width': grows(1, 6) },
  }),
  layer('use-path', 'line', 'use', 'use', {
    only: ['all', ['==', ['get', 'use'], 'path'], ['!=', ['get', 'access'], 'forbidden']],
    minzoom: 12.5,
    paint: { 'line-color': paper.hairline, 'line-width': grows(0.6, 2) },
  }),
  layer('use-water', 'line', 'use', 'use', {
    only: ['==', ['get', 'use'], 'water'],
    paint: { 'line-color': paper.water, 'line-width': grows(0.8, 4) },
  }),
  layer('use-rail', 'line', 'use', 'use', {
    only: ['in', ['get', 'use'], ['literal', ['rail', 'aerodrome']]],
    paint: { 'line-color': paper.hairline, 'line-width': grows(0.8, 2), 'line-dasharray': [6, 2] },
  }),
  layer('use-closed', 'line', 'use', 'use', {
    only: ['==', ['get', 'access'], 'forbidden'],
    minzoom: 12.5,
    paint: { 'line-color': paper.hairline, 'line-width': grows(0.6, 2), 'line-dasharray': [3, 3] },
  }),
];
