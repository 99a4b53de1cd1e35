import { paper, type LayerPiece } from '../../../styles/map-style';
import { layer } from './piece';

export const ringsOn = (source: 'spots' | 'live'): readonly LayerPiece[] => [
  layer(`${source}-ring`, 'fill', source, 'ring', {
    paint: { 'fill-color': ['get', 'colour'], 'fill-antialias': false },
  }),
  layer(`${source}-glare`, 'fill', source, 'ring', {
    only: ['get', 'glare'],
    paint: { 'fill-pattern': 'glare' },
  }),
  layer(`${source}-ring-edge`, 'line', source, 'ring-edge', {
    layout: { 'line-join': 'round' },
    paint: { 'line-color': paper.dataEdge, 'line-width': source === 'live' ? 0.9 : 0.6 },
  }),
];
