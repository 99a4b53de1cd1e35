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

/**
 * How a text is held beyond its place, and where it lies then, in em to the right and down: by eighths of the circle
 * from north, each 0.4 em away.
 */
const beyond = [
  ['bottom', [0, -0.4]],
  ['bottom-left', [0.28, -0.28]],
  ['left', [0.4, 0]],
  ['top-left', [0.28, 0.28]],
  ['top', [0, 0.4]],
  ['top-right', [-0.28, 0.28]],
  ['right', [-0.4, 0]],
  ['bottom-right', [-0.28, -0.28]],
] as const;
/** Eighths of the circle by which a designator gives way to a standing spot: first straight on, then ever more aside. */
const givesWay = [0, 1, 7, 2, 6];
/** Beyond the end of the pavement, whichever way that is: clear of a spot where it can be, else over it. */
const beyondTheEnd = [
  'match',
  ['get', 'anchor'],
  ...beyond.flatMap(([anchor], at) => [
    anchor,
    ['literal', givesWay.flatMap((by) => [...(beyond[(at + by) % 8] ?? [])])],
  ]),
  ['literal', [...beyond[4]]],
];

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
        // One line, and no wider than it is: between close spots every pixel counts.
        'text-line-height': 1,
        'text-padding': 0,
        'text-variable-anchor-offset': beyondTheEnd,
        'text-allow-overlap': true,
      },
      paint: { ...inked, 'text-opacity': closedPale },
    }),
  ];
};
