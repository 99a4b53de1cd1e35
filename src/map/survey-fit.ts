import type { Position } from '../survey/document';
import type { Bounds } from './map-surface';
import { zoomToShow } from './zoom-to-show';

/** Free of the edges when the whole survey is shown, in pixels. */
const margin = 60;
/** px of height for which it is fitted at least: a sheet of a phone that covers the map is pulled down again. */
const leastToFit = 200;
/** Closer than this it is never fitted, however small it is. */
const maxZoom = 16;

/** Where the camera is to be to show bounds: with them inside of the padding, in px, or about their middle. */
export type SurveyFit =
  | {
      readonly kind: 'inside';
      readonly padding: Readonly<Record<'top' | 'right' | 'bottom' | 'left', number>>;
      readonly maxZoom: number;
    }
  | { readonly kind: 'about'; readonly centre: Position; readonly zoom: number };

/** How bounds are fitted into a map of so many px, `left` of which something else takes on its left. */
export function surveyFit(
  bounds: Bounds,
  { width, height }: { readonly width: number; readonly height: number },
  left: number,
): SurveyFit {
  const free = Math.min(margin, width / 8, height / 8);
  if (height >= leastToFit)
    return { kind: 'inside', padding: { top: free, right: free, bottom: free, left: free + left }, maxZoom };
  const [southWest, northEast] = bounds;
  const zoom = zoomToShow(bounds, { width: width - 2 * free, height: leastToFit });
  const centre: Position = [(southWest[0] + northEast[0]) / 2, (southWest[1] + northEast[1]) / 2];
  return { kind: 'about', centre, zoom: Math.min(maxZoom, zoom) };
}
