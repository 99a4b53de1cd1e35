import { inLook, type LayerPiece, type Look } from '../../styles/map-style';
import { fontFaces } from './fonts';
import { imageNames, imageOf } from './images';
import { mapLayers } from './layers';
import { sourceNames, type SourceName } from './map-surface';
import { emptyOverlay } from './overlays/features';

/** In front of the names of our images: a base map brings images of its own, named as it likes. */
const imagePrefix = 'survey:';

/** A layer with the images that it asks for under their names on the map. */
function withOwnImages({ layout, paint, ...layer }: LayerPiece): LayerPiece {
  const renamed = (properties: Readonly<Record<string, unknown>> = {}) =>
    Object.fromEntries(
      Object.entries(properties).map(([name, value]) => [
        name,
        /^icon-image$|-pattern$/.test(name) ? ['concat', imagePrefix, value] : value,
      ]),
    );
  return { ...layer, layout: renamed(layout), paint: renamed(paint) };
}

/**
 * Pixels that an outline may leave its true place by. Ways and fields have thousands of corners, and each is drawn as
 * several triangles; what is read or taken hold of lies where it is.
 */
const toleranceOf = (name: SourceName): number =>
  name === 'ground-plan' || name === 'land' || name === 'use' ? 0.5 : 0.1;

/** The survey's sheet as a style that the map begins with: every source, empty, and every layer in its order. */
export const surveyStyle = (look: Look) => ({
  version: 8,
  'font-faces': fontFaces(),
  sources: Object.fromEntries(
    sourceNames.map((name) => [
      name,
      { type: 'geojson', data: emptyOverlay, tolerance: toleranceOf(name), maxzoom: 20 },
    ]),
  ),
  layers: inLook(mapLayers, look).map(withOwnImages),
});

/** The image that a layer asks for by its name on the map; null for one that is not ours. */
export const surveyImage = (id: string, look: Look): ImageData | null =>
  id.startsWith(imagePrefix) ? imageOf(id.slice(imagePrefix.length), look) : null;

/** Names on the map of all images of ours. */
export const surveyImages: readonly string[] = imageNames.map((name) => imagePrefix + name);
