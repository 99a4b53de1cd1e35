import { fonts, paper, type LayerPiece } from './map-style';

const isClass = (...classes: string[]) => ['in', ['get', 'class'], ['literal', classes]] as const;

/** Widths in pixels at zooms 10, 14 and 18: lines on paper keep their weight, roads in the field their size. */
const widths = (a: number, b: number, c: number) =>
  ['interpolate', ['exponential', 1.6], ['zoom'], 10, a, 14, b, 18, c] as const;

const plan = (
  id: string,
  type: LayerPiece['type'],
  filter: readonly unknown[],
  paint: LayerPiece['paint'],
  more: Partial<LayerPiece> = {},
): LayerPiece => ({
  id: `ground-plan-${id}`,
  type,
  source: 'ground-plan',
  filter,
  paint: paint ?? {},
  ...more,
});

const rounded = { layout: { 'line-cap': 'round', 'line-join': 'round' } };

/** The ground plan of a survey that has one, in the order of printing: tints, water, ways, buildings, names. */
export const groundPlanLayers: readonly LayerPiece[] = [
  plan('settlement', 'fill', isClass('settlement'), { 'fill-color': paper.settlement }),
  plan('meadow', 'fill', isClass('meadow'), { 'fill-color': paper.meadow }),
  plan('wood', 'fill', isClass('wood'), { 'fill-color': paper.wood, 'fill-outline-color': paper.woodEdge }),
  plan(
    'wood-trees',
    'fill',
    isClass('wood'),
    { 'fill-pattern': 'trees', 'fill-opacity': 0.7 },
    { minzoom: 12 },
  ),
  plan('water', 'fill', isClass('water'), { 'fill-color': paper.water }),
  plan('water-edge', 'line', isClass('water'), {
    'line-color': paper.waterEdge,
    'line-width': widths(0.4, 0.8, 1.4),
  }),
  plan(
    'stream',
    'line',
    isClass('stream'),
    { 'line-color': paper.waterEdge, 'line-width': widths(0.5, 1.3, 4) },
    rounded,
  ),
  plan('parking', 'fill', isClass('parking'), {
    'fill-color': paper.parking,
    'fill-outline-color': paper.parkingEdge,
  }),
  plan('pavement', 'fill', isClass('pavement'), {
    'fill-color': paper.pavement,
    'fill-outline-color': paper.pavementEdge,
  }),
  plan(
    'track',
    'line',
    isClass('track'),
    { 'line-color': paper.track, 'line-width': widths(0.4, 0.9, 2), 'line-dasharray': [4, 2.5] },
    { minzoom: 11 },
  ),
  plan(
    'road-minor-edge',
    'line',
    isClass('road-minor'),
    { 'line-color': paper.minorEdge, 'line-width': widths(0.6, 2.6, 15) },
    rounded,
  ),
  plan(
    'road-major-edge',
    'line',
    isClass('road-major'),
    { 'line-color': paper.majorEdge, 'line-width': widths(1.6, 5, 24) },
    rounded,
  ),
  plan(
    'road-minor',
    'line',
    isClass('road-minor'),
    { 'line-color': paper.minor, 'line-width': widths(0.2, 1.4, 13) },
    rounded,
  ),
  plan(
    'road-major',
    'line',
    isClass('road-major'),
    { 'line-color': paper.major, 'line-width': widths(0.8, 3.4, 21) },
    rounded,
  ),
  plan('rail', 'line', isClass('rail'), { 'line-color': paper.rail, 'line-width': widths(0.7, 1.2, 2) }),
  plan(
    'rail-sleepers',
    'line',
    isClass('rail'),
    { 'line-color': paper.rail, 'line-width': widths(2.5, 4.5, 9), 'line-dasharray': [0.16, 2.2] },
    { minzoom: 11.5 },
  ),
  plan(
    'fence',
    'line',
    isClass('fence'),
    { 'line-color': paper.fence, 'line-width': widths(0.5, 0.8, 1.5), 'line-dasharray': [3, 1.6, 0.6, 1.6] },
    { minzoom: 12.5 },
  ),
  plan('building', 'fill', isClass('building'), {
    'fill-color': paper.building,
    'fill-outline-color': paper.buildingEdge,
  }),
  plan('terminal', 'fill', isClass('terminal'), { 'fill-color': paper.terminal }),
  plan('terminal-edge', 'line', isClass('terminal'), {
    'line-color': paper.terminalEdge,
    'line-width': widths(0.5, 0.9, 1.6),
  }),
  {
    id: 'plan-name-line',
    type: 'symbol',
    source: 'ground-plan',
    minzoom: 13,
    filter: ['all', ['has', 'name'], isClass('road-major', 'road-minor', 'track', 'rail', 'stream')],
    layout: {
      'symbol-placement': 'line',
      'symbol-spacing': 420,
      'text-field': ['get', 'name'],
      'text-font': [fonts.plain],
      'text-size': 11,
      'text-letter-spacing': 0.04,
      'text-max-angle': 25,
    },
    paint: { 'text-color': paper.name, 'text-halo-color': paper.page, 'text-halo-width': 1.4 },
  },
  {
    id: 'plan-name-area',
    type: 'symbol',
    source: 'ground-plan',
    minzoom: 11.5,
    filter: [
      'all',
      ['has', 'name'],
      isClass('settlement', 'wood', 'meadow', 'water', 'parking', 'terminal', 'building'),
    ],
    layout: {
      'text-field': ['get', 'name'],
      'text-font': [fonts.plain],
      'text-size': ['case', isClass('settlement'), 13, 11],
      'text-letter-spacing': ['case', isClass('settlement'), 0.12, 0.02],
      'text-max-width': 8,
    },
    paint: {
      'text-color': ['case', isClass('water'), paper.waterName, paper.name],
      'text-halo-color': paper.page,
      'text-halo-width': 1.4,
    },
  },
];

/** A survey without a plan lies on ruled paper: meridians and parallels that thin out with the zoom. */
export const gridLayers: readonly LayerPiece[] = [
  {
    id: 'grid-fine',
    type: 'line',
    source: 'grid',
    filter: ['==', ['get', 'weight'], 'fine'],
    paint: { 'line-color': paper.gridFine, 'line-width': 0.8 },
  },
  {
    id: 'grid-bold',
    type: 'line',
    source: 'grid',
    filter: ['==', ['get', 'weight'], 'bold'],
    paint: { 'line-color': paper.gridBold, 'line-width': 0.9 },
  },
  {
    id: 'grid-label',
    type: 'symbol',
    source: 'grid',
    filter: ['==', ['get', 'weight'], 'bold'],
    layout: {
      'symbol-placement': 'line',
      'symbol-spacing': 500,
      'text-field': ['get', 'label'],
      'text-font': [fonts.plain],
      'text-size': 10.5,
      'text-padding': 30,
    },
    paint: { 'text-color': paper.gridName, 'text-halo-color': paper.page, 'text-halo-width': 2 },
  },
];
