import { fonts, paper, type LayerPiece } from '../../../styles/map-style';
import { always, inked, label, layer } from './piece';

/** The size of a numeral on the pavement: true to the ground. */
const painted = [
  'interpolate',
  ['exponential', 2],
  ['zoom'],
  0,
  ['get', 'sizeAtZoom0'],
  20,
  // The largest size that the map can print.
  ['min', 250, ['*', ['get', 'sizeAtZoom0'], 2 ** 20]],
];
export const turned = {
  'text-rotate': ['get', 'turn'],
  'text-rotation-alignment': 'map',
  'text-pitch-alignment': 'map',
};
const closedPale = ['case', ['get', 'closed'], 0.45, 1];

/** From here on a numeral on the pavement can be read, so that none is needed before it. */
const paintedFrom = { wide: 15.5, narrow: 17 } as const;
/** Upright on the screen at both ends: turned as it is painted, a 20 is read as 02, a 16 as 91. */
export const numerals = (which: 'wide' | 'narrow'): readonly LayerPiece[] => {
  const only = ['==', ['get', 'narrow'], which === 'narrow'];
  return [
    layer(`numeral-${which}`, 'symbol', 'ground', 'numeral', {
      only,
      minzoom: paintedFrom[which],
      layout: {
        'text-field': ['get', 'text'],
        'text-font': [fonts.strong],
        'text-size': painted,
        ...always,
      },
      paint: { 'text-color': paper.sheet, 'text-opacity': closedPale },
    }),
    layer(`designator-${which}`, 'symbol', 'ground', 'designator', {
      only,
      minzoom: 10,
      maxzoom: paintedFrom[which],
      layout: {
        'text-field': ['get', 'text'],
        ...label(14, true),
        // Beyond the end of the pavement, whichever way that is.
        'text-anchor': ['get', 'anchor'],
        'text-radial-offset': 0.4,
        'text-allow-overlap': true,
      },
      paint: { ...inked, 'text-opacity': closedPale },
    }),
  ];
};
