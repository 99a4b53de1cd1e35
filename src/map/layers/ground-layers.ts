import { paper, type LayerPiece } from '../../../styles/map-style';
import { grows, layer, round } from './piece';

export const groundLayers: readonly LayerPiece[] = [
  layer('apron', 'fill', 'ground', 'apron', {
    paint: { 'fill-color': paper.apron, 'fill-outline-color': paper.apronEdge },
  }),
  layer('taxi-edge', 'line', 'ground', 'taxi-route', {
    layout: round,
    paint: { 'line-color': paper.apronEdge, 'line-width': grows(1.6, 17) },
  }),
  layer('taxi-route', 'line', 'ground', 'taxi-route', {
    layout: round,
    paint: { 'line-color': paper.apron, 'line-width': grows(0.8, 15) },
  }),
  layer('taxi-centre', 'line', 'ground', 'taxi-route', {
    minzoom: 14,
    paint: { 'line-color': paper.softInk, 'line-width': 0.8, 'line-dasharray': [6, 4] },
  }),
  layer('no-go', 'fill', 'ground', 'no-go', { paint: { 'fill-pattern': 'no-go', 'fill-opacity': 0.55 } }),
  layer('no-go-edge', 'line', 'ground', 'no-go', {
    paint: { 'line-color': paper.noGo, 'line-width': 1.2, 'line-dasharray': [5, 3] },
  }),
  layer('obstacle', 'fill', 'ground', 'obstacle', {
    paint: {
      'fill-color': ['case', ['==', ['get', 'looks'], 'leaves'], paper.leaf, paper.obstacle],
      'fill-opacity': 0.9,
    },
  }),
  layer('obstacle-edge', 'line', 'ground', 'obstacle', {
    paint: { 'line-color': paper.obstacleEdge, 'line-width': grows(0.8, 1.6) },
  }),
  layer('obstacle-line', 'line', 'ground', 'obstacle-line', {
    only: ['!=', ['get', 'looks'], 'wires'],
    layout: round,
    paint: {
      'line-color': ['case', ['==', ['get', 'looks'], 'leaves'], paper.leaf, paper.obstacleEdge],
      'line-width': grows(1.6, 4),
    },
  }),
  layer('obstacle-mesh', 'line', 'ground', 'obstacle-line', {
    only: ['==', ['get', 'looks'], 'wires'],
    paint: {
      'line-color': paper.obstacleEdge,
      'line-width': grows(1.2, 2.4),
      'line-dasharray': [3, 1.2, 0.6, 1.2],
    },
  }),
  layer('flight-path', 'line', 'ground', 'flight-path', {
    layout: round,
    paint: { 'line-color': paper.softInk, 'line-width': 1, 'line-dasharray': [2, 2] },
  }),
  layer('display-line', 'line', 'ground', 'display-line', {
    layout: round,
    paint: { 'line-color': paper.ink, 'line-width': 1.6, 'line-dasharray': [8, 3, 1, 3] },
  }),
  layer('crowd-line', 'line', 'ground', 'crowd-line', {
    layout: round,
    paint: { 'line-color': paper.ink, 'line-width': grows(1.6, 3.2), 'line-dasharray': [0.4, 1.6] },
  }),
  layer('winch-run', 'line', 'ground', 'winch-run', {
    layout: round,
    paint: { 'line-color': paper.softInk, 'line-width': 1.4, 'line-dasharray': [1, 2] },
  }),
  layer('helipad', 'circle', 'ground', 'helipad', {
    paint: {
      'circle-radius': grows(4, 9),
      'circle-color': paper.apron,
      'circle-stroke-color': paper.ink,
      'circle-stroke-width': 1.6,
    },
  }),
];

export const runwayLayers: readonly LayerPiece[] = [
  layer('strip-edge', 'line', 'lit', 'strip', {
    layout: { 'line-cap': 'butt' },
    paint: { 'line-color': paper.dataEdge, 'line-width': 6.4 },
  }),
  layer('strip', 'line', 'lit', 'strip', {
    layout: { 'line-cap': 'butt' },
    paint: { 'line-color': ['get', 'colour'], 'line-width': 4.6 },
  }),
  layer('runway-line', 'line', 'ground', 'runway-line', {
    paint: { 'line-color': paper.runway, 'line-width': 3 },
  }),
  layer('runway', 'fill', 'ground', 'runway', { paint: { 'fill-color': paper.runway } }),
  layer('touchdown', 'fill', 'paths', 'touchdown', {
    minzoom: 11.5,
    paint: { 'fill-color': paper.sheet, 'fill-opacity': 0.22 },
  }),
  layer('touchdown-edge', 'line', 'paths', 'touchdown', {
    minzoom: 12.5,
    paint: { 'line-color': paper.sheet, 'line-width': 1, 'line-dasharray': [2, 1.5] },
  }),
  layer('centreline', 'line', 'ground', 'centreline', {
    minzoom: 13.5,
    paint: { 'line-color': paper.sheet, 'line-width': grows(0.6, 1.6), 'line-dasharray': [9, 6] },
  }),
  layer('threshold', 'line', 'ground', 'threshold', {
    minzoom: 13,
    paint: { 'line-color': paper.sheet, 'line-width': grows(1, 3.2) },
  }),
  layer('lead-in', 'line', 'ground', 'lead-in', {
    minzoom: 14,
    paint: { 'line-color': paper.sheet, 'line-width': grows(0.5, 1.6) },
  }),
];
