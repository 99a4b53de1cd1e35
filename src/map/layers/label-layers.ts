import { fonts, paper, type LayerPiece } from '../../../styles/map-style';
import { numerals, turned } from './numeral-layers';
import { inked, label, layer } from './piece';

const stationImage = (selected: string) => [
  'case',
  ['get', 'forbidden'],
  `spot-forbidden${selected}`,
  `spot${selected}`,
];

/** A standing spot with its name. It is always there, and keeps other labels off its rings. */
const spots = (
  source: 'spots' | 'live',
  part: string,
  selected: string,
  clear: number,
  more: { readonly layout: object; readonly paint: object },
): LayerPiece =>
  layer(part, 'symbol', source, part, {
    layout: {
      'icon-image': stationImage(selected),
      'icon-allow-overlap': true,
      'icon-padding': clear,
      'text-field': ['get', 'label'],
      'text-optional': true,
      'text-variable-anchor-offset': ['get', 'places'],
      // Where all lies close together, as on a phone, names are narrow and high.
      'text-max-width': ['step', ['zoom'], 6, 12.5, 9],
      'text-padding': 1,
      'text-justify': 'auto',
      ...more.layout,
    },
    paint: { ...inked, ...more.paint },
  });

/** Names and figures, the least important first: the map places the last ones first and drops what collides. */
export const labelLayers: readonly LayerPiece[] = [
  layer('taxi-name', 'symbol', 'ground', ['taxi-route', 'display-line', 'crowd-line', 'winch-run'], {
    minzoom: 14,
    layout: { 'symbol-placement': 'line', 'text-field': ['get', 'label'], ...label(11) },
    paint: { ...inked, 'text-color': paper.softInk },
  }),
  layer('place-name', 'symbol', 'ground', ['apron', 'no-go', 'obstacle', 'helipad'], {
    minzoom: 13.5,
    layout: { 'text-field': ['get', 'label'], 'text-max-width': 9, ...label(11) },
    paint: { ...inked, 'text-color': paper.softInk },
  }),
  layer('obstacle-name', 'symbol', 'ground', 'obstacle-line', {
    minzoom: 14,
    layout: { 'symbol-placement': 'line', 'text-field': ['get', 'label'], ...label(11) },
    paint: { ...inked, 'text-color': paper.softInk },
  }),
  layer('path-name', 'symbol', 'paths', 'way', {
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
  layer('strip-label', 'symbol', 'lit', 'strip-label', {
    layout: {
      'text-field': ['get', 'text'],
      ...label(12),
      ...turned,
    },
    paint: inked,
  }),
  ...numerals('narrow'),
  ...numerals('wide'),
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
  spots('spots', 'spot', '', 10, { layout: label(12), paint: {} }),
  spots('live', 'selected-spot', '-selected', 34, {
    layout: { ...label(13, true), 'icon-size': 1.15, 'text-allow-overlap': true },
    paint: { 'text-color': paper.signal },
  }),
  // Before its spot, whose free room round it would leave none for them.
  layer('ring-letter', 'symbol', 'live', 'ring-letter', {
    layout: {
      'text-field': ['get', 'text'],
      ...label(10.5, true),
      'text-anchor': ['get', 'anchor'],
    },
    paint: inked,
  }),
  layer('inspected-label', 'symbol', 'live', 'inspected', {
    layout: {
      'text-field': ['get', 'label'],
      ...label(13, true),
      'text-anchor': 'bottom',
      'text-max-width': 40,
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
      'text-max-width': 40,
      'text-offset': [0.9, -0.9],
      'text-justify': 'left',
      'text-allow-overlap': true,
    },
    paint: { ...inked, 'text-halo-width': 2.6 },
  }),
];
