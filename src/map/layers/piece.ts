import { fonts, paper, type LayerPiece } from '../../../styles/map-style';
import type { SourceName } from '../map-surface';

type More = Omit<LayerPiece, 'id' | 'type' | 'source' | 'filter'>;

/** A layer for one part of a source. */
export const layer = (
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

export const label = (size: number, strong = false) => ({
  'text-font': [strong ? fonts.strong : fonts.plain],
  'text-size': size,
  'text-line-height': 1.25,
});
export const inked = { 'text-color': paper.ink, 'text-halo-color': paper.sheet, 'text-halo-width': 1.8 };
export const always = {
  'text-allow-overlap': true,
  'text-ignore-placement': true,
  'icon-allow-overlap': true,
  'icon-ignore-placement': true,
};
export const round = { 'line-cap': 'round', 'line-join': 'round' };

/** Widths in pixels at zooms 11 and 17. */
export const grows = (a: number, b: number) => ['interpolate', ['linear'], ['zoom'], 11, a, 17, b];
