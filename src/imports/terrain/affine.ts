import type { GeoTIFFImage } from 'geotiff';

/** Degrees of the middle of the first sample, that in the north-west, and from sample to sample. */
export interface Affine {
  readonly west: number;
  readonly north: number;
  readonly stepLng: number;
  readonly stepLat: number;
}

const tag = (image: GeoTIFFImage, name: 'ModelTiepoint' | 'ModelPixelScale' | 'ModelTransformation') => {
  const value: unknown = image.fileDirectory.getValue(name);
  return value === undefined || value === null ? null : Array.from(value as ArrayLike<number>);
};

/**
 * Where a north-up image lies (OGC GeoTIFF 1.1, 7.1 and Annex B); null for a rotated one, one that runs south up, or one
 * that does not say. Coordinates belong to the outer corner of a sample, or to its middle where the raster is of points.
 */
export function affineOf(image: GeoTIFFImage, keys: Record<string, unknown>): Affine | null {
  const scale = tag(image, 'ModelPixelScale');
  const tie = tag(image, 'ModelTiepoint');
  const matrix = tag(image, 'ModelTransformation');
  const middle = Number(keys['GTRasterTypeGeoKey']) === 2 ? 0 : 0.5;
  let placed: { stepLng: number; stepLat: number; west: number; north: number };
  if (scale && tie && tie.length >= 6) {
    const [i = 0, j = 0, , x = NaN, y = NaN] = tie;
    const [stepLng = NaN, stepLat = NaN] = scale;
    placed = { stepLng, stepLat, west: x - i * stepLng, north: y + j * stepLat };
  } else if (matrix) {
    const [a = NaN, b = NaN, , d = NaN, e = NaN, f = NaN, , h = NaN] = matrix;
    if (b !== 0 || e !== 0) return null;
    placed = { stepLng: a, stepLat: -f, west: d, north: h };
  } else return null;
  const { stepLng, stepLat, west, north } = placed;
  if (!(stepLng > 0 && stepLat > 0 && Number.isFinite(west) && Number.isFinite(north))) return null;
  return { stepLng, stepLat, west: west + middle * stepLng, north: north - middle * stepLat };
}
