import { paper, type LayerPiece } from './map-style';

/**
 * The world's land on the plain plan. Its coasts are good to a kilometre or two: they fade away before anybody could
 * take them for the shore beside an airfield.
 */
const fades = (opacity: number) => ['interpolate', ['linear'], ['zoom'], 7, opacity, 9, 0];
export const landUntil = 9;

export const landLayers: readonly LayerPiece[] = [
  {
    id: 'land',
    type: 'fill',
    source: 'land',
    maxzoom: landUntil,
    paint: { 'fill-color': paper.land, 'fill-opacity': fades(1), 'fill-antialias': false },
  },
  {
    id: 'coast',
    type: 'line',
    source: 'land',
    maxzoom: landUntil,
    paint: { 'line-color': paper.coast, 'line-width': 0.9, 'line-opacity': fades(1) },
  },
];

/** Lies over a base map, so that the survey stands out; and marks where base maps end. */
export const veilLayer: LayerPiece = {
  id: 'base-veil',
  type: 'background',
  layout: { visibility: 'none' },
  paint: { 'background-color': paper.page, 'background-opacity': 0.42 },
};
