import type { Look } from './map-style';

/** How slopes are shaded: their dark side is darker than the sheet in every look, calm enough to write on. */
export const reliefPaint: Readonly<Record<Look, Readonly<Record<string, string | number>>>> = {
  day: shading('#6b5f48', '#ffffff', '#8a7d62', 0.4),
  night: shading('#000000', '#6a716a', '#000000', 0.5),
  contrast: shading('#6f6f6f', '#ffffff', '#8f8f8f', 0.3),
};

function shading(shadow: string, highlight: string, accent: string, exaggeration: number) {
  return {
    'hillshade-shadow-color': shadow,
    'hillshade-highlight-color': highlight,
    'hillshade-accent-color': accent,
    'hillshade-exaggeration': exaggeration,
  };
}
