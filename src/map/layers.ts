import { fonts, gridLayers, paper, planLayers, type LayerPiece } from '../../styles/map-style';
import type { SourceName } from './map-surface';

type More = Omit<LayerPiece, 'id' | 'type' | 'source' | 'filter'>;

/** A layer for one part of a source. */
const layer = (
  id: string,
  type: LayerPiece['type'],
  source: SourceName,
  part: string | readonly string[],
  more: More & { readonly only?: readonly unknown[] },
): LayerPiece => {
  const { only, ...rest } = more;
  const isPart = ['in', ['get', 'part'], ['literal', typeof part === 'string' ? [part] : part]];
  return { id, type, source, filter: only ? ['all', isPart, only] : isPart, ...rest };
};

const label = (size: number, strong = false) => ({
  'text-font': [strong ? fonts.strong : fonts.plain],
  'text-size': size,
  'text-line-height': 1.25,
});
const inked = { 'text-color': paper.ink, 'text-halo-color': paper.sheet, 'text-halo-width': 1.8 };
const always = {
  'text-allow-overlap': true,
  'text-ignore-placement': true,
  'icon-allow-overlap': true,
  'icon-ignore-placement': true,
};
const round = { 'line-cap': 'round', 'line-join': 'round' };

/** Widths in pixels at zooms 11 and 17. */
const grows = (a: number, b: number) => ['interpolate', ['linear'], ['zoom'], 11, a, 17, b];

const groundLayers: readonly LayerPiece[] = [
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
    paint: { 'line-color': '#6b5a48', 'line-width': 1.2, 'line-dasharray': [5, 3] },
  }),
  layer('obstacle', 'fill', 'ground', 'obstacle', {
    paint: {
      'fill-color': ['case', ['==', ['get', 'sight'], 'leaf'], paper.leaf, paper.obstacle],
      'fill-opacity': 0.9,
    },
  }),
  layer('obstacle-edge', 'line', 'ground', 'obstacle', {
    paint: { 'line-color': paper.obstacleEdge, 'line-width': grows(0.8, 1.6) },
  }),
  layer('obstacle-line', 'line', 'ground', 'obstacle-line', {
    only: ['!=', ['get', 'sight'], 'mesh'],
    layout: round,
    paint: {
      'line-color': ['case', ['==', ['get', 'sight'], 'leaf'], paper.leaf, paper.obstacleEdge],
      'line-width': grows(1.6, 4),
    },
  }),
  layer('obstacle-mesh', 'line', 'ground', 'obstacle-line', {
    only: ['==', ['get', 'sight'], 'mesh'],
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
];

const runwayLayers: readonly LayerPiece[] = [
  layer('strip-edge', 'line', 'lit', 'strip', {
    layout: { 'line-cap': 'butt' },
    paint: { 'line-color': paper.ink, 'line-width': 7.5 },
  }),
  layer('strip', 'line', 'lit', 'strip', {
    layout: { 'line-cap': 'butt' },
    paint: { 'line-color': ['get', 'colour'], 'line-width': 5.5 },
  }),
  layer('runway-line', 'line', 'ground', 'runway-line', {
    paint: { 'line-color': paper.runway, 'line-width': 3 },
  }),
  layer('runway', 'fill', 'ground', 'runway', { paint: { 'fill-color': paper.runway } }),
  layer('touchdown', 'fill', 'paths', 'touchdown', {
    minzoom: 11.5,
    paint: { 'fill-color': paper.sheet, 'fill-opacity': 0.3 },
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

const pathLayers: readonly LayerPiece[] = [
  layer('path-plain', 'line', 'paths', 'path', {
    only: ['get', 'plain'],
    layout: round,
    paint: { 'line-color': paper.ink, 'line-width': 1.1, 'line-opacity': 0.75 },
  }),
  layer('path-edge', 'line', 'paths', 'path', {
    only: ['all', ['!', ['get', 'plain']], ['get', 'reach']],
    layout: { 'line-cap': 'butt', 'line-join': 'round' },
    paint: { 'line-color': paper.sheet, 'line-width': 7 },
  }),
  layer('path-far', 'line', 'paths', 'path', {
    only: ['all', ['!', ['get', 'plain']], ['!', ['get', 'reach']]],
    paint: { 'line-color': ['get', 'colour'], 'line-width': 1.8 },
  }),
  layer('path', 'line', 'paths', 'path', {
    only: ['all', ['!', ['get', 'plain']], ['get', 'reach']],
    layout: { 'line-cap': 'butt', 'line-join': 'round' },
    paint: { 'line-color': ['get', 'colour'], 'line-width': 4.5 },
  }),
  layer('path-way', 'symbol', 'paths', 'path', {
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

const ringsOn = (source: 'spots' | 'live'): readonly LayerPiece[] => [
  layer(`${source}-ring`, 'fill', source, 'ring', {
    paint: { 'fill-color': ['get', 'colour'], 'fill-antialias': false },
  }),
  layer(`${source}-glare`, 'fill', source, 'ring', {
    only: ['get', 'glare'],
    paint: { 'fill-pattern': 'glare' },
  }),
  layer(`${source}-ring-edge`, 'line', source, 'ring-edge', {
    layout: { 'line-join': 'round' },
    paint: { 'line-color': paper.ink, 'line-width': source === 'live' ? 0.9 : 0.6 },
  }),
];

const stationImage = (selected: string) => [
  'case',
  ['get', 'forbidden'],
  `spot-forbidden${selected}`,
  `spot${selected}`,
];

const selectionLayers: readonly LayerPiece[] = [
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

const handleLayers: readonly LayerPiece[] = [
  layer('tick', 'symbol', 'live', 'tick', {
    layout: {
      'icon-image': 'tick',
      'icon-rotate': ['get', 'turn'],
      'icon-rotation-alignment': 'map',
      ...always,
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
      'circle-color': 'rgba(251, 248, 239, 0.5)',
      'circle-stroke-color': paper.signal,
      'circle-stroke-width': 2.4,
    },
  }),
  layer('spot', 'symbol', 'spots', 'spot', { layout: { 'icon-image': stationImage(''), ...always } }),
  layer('selected-spot', 'symbol', 'live', 'selected-spot', {
    layout: { 'icon-image': stationImage('-selected'), 'icon-size': 1.15, ...always },
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

/** The size of a numeral on the pavement: true to the ground. */
const painted = [
  'interpolate',
  ['exponential', 2],
  ['zoom'],
  0,
  ['get', 'sizeAtZoom0'],
  20,
  ['*', ['get', 'sizeAtZoom0'], 2 ** 20],
];
const turned = {
  'text-rotate': ['get', 'turn'],
  'text-rotation-alignment': 'map',
  'text-pitch-alignment': 'map',
};
const closedPale = ['case', ['get', 'closed'], 0.45, 1];

/** From here on a numeral on the pavement can be read, so that none is needed before it. */
const paintedFrom = { wide: 15.5, narrow: 17 } as const;
const numerals = (which: 'wide' | 'narrow'): readonly LayerPiece[] => {
  const only = ['==', ['get', 'narrow'], which === 'narrow'];
  return [
    layer(`numeral-${which}`, 'symbol', 'ground', 'numeral', {
      only,
      minzoom: paintedFrom[which],
      layout: {
        'text-field': ['get', 'text'],
        'text-font': [fonts.strong],
        'text-size': painted,
        ...turned,
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
        'text-anchor': 'top',
        'text-offset': [0, 0.25],
        ...turned,
        'text-allow-overlap': true,
      },
      paint: { ...inked, 'text-opacity': closedPale },
    }),
  ];
};

/** Names and figures, the least important first: the map places the last ones first and drops what collides. */
const labelLayers: readonly LayerPiece[] = [
  layer('taxi-name', 'symbol', 'ground', 'taxi-route', {
    minzoom: 14,
    layout: { 'symbol-placement': 'line', 'text-field': ['get', 'label'], ...label(11) },
    paint: { ...inked, 'text-color': paper.softInk },
  }),
  layer('place-name', 'symbol', 'ground', ['apron', 'no-go', 'obstacle'], {
    minzoom: 13.5,
    layout: { 'text-field': ['get', 'label'], 'text-max-width': 9, ...label(11) },
    paint: { ...inked, 'text-color': paper.softInk },
  }),
  layer('obstacle-name', 'symbol', 'ground', 'obstacle-line', {
    minzoom: 14,
    layout: { 'symbol-placement': 'line', 'text-field': ['get', 'label'], ...label(11) },
    paint: { ...inked, 'text-color': paper.softInk },
  }),
  layer('path-name', 'symbol', 'paths', 'path', {
    layout: {
      'symbol-placement': 'line',
      'symbol-spacing': 600,
      'text-field': ['get', 'name'],
      ...label(12),
      'text-offset': [0, -0.9],
    },
    paint: inked,
  }),
  layer('tick-label', 'symbol', 'live', 'tick', {
    layout: {
      'text-field': [
        'format',
        ['get', 'station'],
        { 'text-font': ['literal', [fonts.strong]] },
        '\n',
        {},
        ['get', 'detail'],
        { 'font-scale': 0.92 },
      ],
      ...label(12),
      'text-variable-anchor': ['left', 'right', 'top', 'bottom'],
      'text-radial-offset': 0.9,
      'text-justify': 'auto',
      'symbol-sort-key': ['get', 'range'],
    },
    paint: inked,
  }),
  ...numerals('narrow'),
  ...numerals('wide'),
  layer('strip-label', 'symbol', 'lit', 'strip-label', {
    layout: {
      'text-field': ['get', 'text'],
      ...label(12, true),
      'text-anchor': 'right',
      'text-offset': [-0.4, 0],
      ...turned,
    },
    paint: inked,
  }),
  layer('spot-name', 'symbol', 'spots', 'spot', {
    layout: {
      'text-field': ['get', 'label'],
      ...label(12),
      'text-anchor': ['get', 'anchor'],
      'text-radial-offset': ['get', 'offset'],
      'text-max-width': 9,
      'text-justify': 'auto',
    },
    paint: inked,
  }),
  layer('ring-letter', 'symbol', 'live', 'ring-letter', {
    layout: { 'text-field': ['get', 'text'], ...label(10.5, true), ...always },
    paint: inked,
  }),
  layer('mark-label', 'symbol', 'live', ['best', 'closest'], {
    layout: {
      'text-field': ['get', 'label'],
      ...label(12, true),
      'text-variable-anchor': ['bottom', 'top', 'right', 'left'],
      'text-radial-offset': 0.9,
      'symbol-sort-key': ['get', 'rank'],
    },
    paint: inked,
  }),
  layer('selected-spot-name', 'symbol', 'live', 'selected-spot', {
    layout: {
      'text-field': ['get', 'label'],
      ...label(13, true),
      'text-anchor': ['get', 'anchor'],
      'text-radial-offset': ['get', 'offset'],
      'text-max-width': 9,
      'text-justify': 'auto',
    },
    paint: { ...inked, 'text-color': paper.signal },
  }),
  layer('inspected-label', 'symbol', 'live', 'inspected', {
    layout: {
      'text-field': ['get', 'label'],
      ...label(13, true),
      'text-anchor': 'bottom',
      'text-offset': [0, -0.9],
      'text-allow-overlap': true,
    },
    paint: inked,
  }),
  layer('drawn-label', 'symbol', 'live', 'drawn-pointer', {
    layout: {
      'text-field': ['get', 'label'],
      ...label(14, true),
      'text-anchor': 'bottom-left',
      'text-offset': [0.9, -0.9],
      'text-justify': 'left',
      'text-allow-overlap': true,
    },
    paint: { ...inked, 'text-halo-width': 2.6 },
  }),
];

const isName = ({ id }: LayerPiece) => id.startsWith('plan-name');

/** Everything on the map, in the order in which it is printed. */
export const mapLayers: readonly LayerPiece[] = [
  { id: 'page', type: 'background', paint: { 'background-color': paper.page } },
  ...gridLayers.filter((l) => l.type === 'line'),
  ...planLayers.filter((l) => !isName(l)),
  ...groundLayers,
  ...runwayLayers,
  ...pathLayers,
  ...ringsOn('spots'),
  ...ringsOn('live'),
  ...selectionLayers,
  ...handleLayers,
  ...gridLayers.filter((l) => l.type === 'symbol'),
  ...planLayers.filter(isName),
  ...labelLayers,
];

/** What can be picked, by what the user most likely means: a handle before a spot, a spot before the ground. */
export const pickLayers = {
  vertex: ['vertex'],
  midpoint: ['midpoint'],
  spot: ['selected-spot', 'spot'],
  path: ['path', 'path-far', 'path-plain'],
  ground: [
    'runway',
    'runway-line',
    'obstacle-line',
    'obstacle-mesh',
    'obstacle',
    'taxi-edge',
    'flight-path',
    'apron',
    'no-go',
  ],
} as const;
