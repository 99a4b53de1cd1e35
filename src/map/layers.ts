import { paper, type LayerPiece } from '../../styles/map-style';
import { landLayers, veilLayer } from '../../styles/land-layers';
import { gridLayers, groundPlanLayers } from '../../styles/ground-plan-layers';
import { groundLayers, runwayLayers } from './layers/ground-layers';
import { labelLayers } from './layers/label-layers';
import { handleLayers, selectionLayers } from './layers/mark-layers';
import { useLayers } from './layers/use-layers';
import { pathLayers } from './layers/path-layers';
import { mergeLayers } from './layers/merge-layers';
import { placeMarkLayers, reachLineLayers } from './layers/place-layers';
import { ringsOn } from './layers/ring-layers';

const isName = ({ id }: LayerPiece) => id.startsWith('ground-plan-name');

/**
 * Layers that mark a place in the order and draw nothing by themselves. What is put in before `base` lies on the
 * plain plan and under everything else; what is put in before `relief` lies on the base map and under the survey; what is
 * put in before `picture` lies on the roads that were brought in as well.
 */
export const slots = { base: veilLayer.id, relief: 'relief-slot', picture: 'picture-slot' } as const;

/** Everything on the map, in the order in which it is printed. */
export const mapLayers: readonly LayerPiece[] = [
  { id: 'page', type: 'background', paint: { 'background-color': paper.page } },
  ...landLayers,
  ...gridLayers.filter((l) => l.type === 'line'),
  ...groundPlanLayers.filter((l) => !isName(l)),
  veilLayer,
  { id: slots.relief, type: 'background', layout: { visibility: 'none' } },
  ...useLayers,
  { id: slots.picture, type: 'background', layout: { visibility: 'none' } },
  ...groundLayers,
  ...runwayLayers,
  ...pathLayers,
  ...reachLineLayers,
  ...ringsOn('spots'),
  ...ringsOn('live'),
  ...selectionLayers,
  ...handleLayers,
  ...gridLayers.filter((l) => l.type === 'symbol'),
  ...groundPlanLayers.filter(isName),
  ...labelLayers,
  ...placeMarkLayers,
  ...mergeLayers,
];

/** What can be picked, by what the user most likely means: a handle before a spot, a spot before the ground. */
export const pickLayers = {
  vertex: ['vertex'],
  midpoint: ['midpoint'],
  spot: ['selected-spot', 'spot'],
  path: ['path', 'path-far', 'path-hidden', 'path-plain'],
  ground: [
    'runway',
    'runway-line',
    'obstacle-line',
    'obstacle-mesh',
    'obstacle',
    'taxi-edge',
    'flight-path',
    'display-line',
    'crowd-line',
    'winch-run',
    'helipad',
    'apron',
    'no-go',
  ],
} as const;
