import { paper, type LayerPiece } from '../../../styles/map-style';
import { always, inked, label, layer, round } from './piece';

const thicker = (width: number) => ['case', ['get', 'marked'], width * 1.6, width];

/** Two states of one thing while surveys are merged: mine whole and round, theirs broken and square. */
export const mergeLayers: readonly LayerPiece[] = [
  layer('merge-edge', 'line', 'merge', ['mine-line', 'theirs-line'], {
    layout: round,
    paint: { 'line-color': paper.casing, 'line-width': thicker(5.5) },
  }),
  layer('merge-mine-line', 'line', 'merge', 'mine-line', {
    layout: round,
    paint: { 'line-color': paper.ink, 'line-width': thicker(2.5) },
  }),
  layer('merge-theirs-line', 'line', 'merge', 'theirs-line', {
    paint: { 'line-color': paper.signal, 'line-width': thicker(2.5), 'line-dasharray': [2.5, 1.5] },
  }),
  layer('merge-mine', 'circle', 'merge', 'mine', {
    paint: {
      'circle-radius': ['case', ['get', 'marked'], 16, 13],
      'circle-color': 'rgba(0, 0, 0, 0)',
      'circle-stroke-width': ['case', ['get', 'marked'], 4, 2.5],
      'circle-stroke-color': paper.ink,
    },
  }),
  layer('merge-theirs', 'symbol', 'merge', 'theirs', {
    layout: {
      'icon-image': 'theirs',
      'icon-size': ['case', ['get', 'marked'], 1.25, 1],
      ...always,
    },
  }),
  ...(['mine', 'theirs'] as const).map((part) =>
    layer(`merge-${part}-name`, 'symbol', 'merge', part, {
      layout: {
        'text-field': ['get', 'text'],
        ...label(13, true),
        'text-anchor': part === 'mine' ? 'right' : 'left',
        'text-offset': [part === 'mine' ? -1.3 : 1.3, 0],
        ...always,
      },
      paint: { ...inked, 'text-color': part === 'mine' ? paper.ink : paper.signal },
    }),
  ),
];
