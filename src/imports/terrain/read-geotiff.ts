import { fromArrayBuffer, fromBlob, type GeoTIFFImage } from 'geotiff';
import { RAD, wrap180 } from '../../figures/geometry/angles';
import type { Position } from '../../survey/document';
import { affineOf, type Affine } from './affine';

/** Sampled heights as the figures take them (`ElevationGrid`): rows from north to south, NaN where unknown. */
export interface ReadElevations {
  readonly columns: number;
  readonly rows: number;
  /** Degrees of the first sample, that in the north-west. */
  readonly west: number;
  readonly north: number;
  /** Degrees from sample to sample. */
  readonly stepLng: number;
  readonly stepLat: number;
  /** m above mean sea level. */
  readonly heights: Float32Array;
}

export type TerrainReading =
  { readonly ok: true; readonly grid: ReadElevations } | { readonly ok: false; readonly reason: string };

/** Degrees of latitude round the airfield that are read: a good 20 km. What lies beyond is never looked at. */
const around = 0.19;
/** Samples that are kept at most, about 64 MB; of a finer model less ground is read. */
const mostSamples = 16e6;
/** Metres in the vertical units that GeoTIFF names (EPSG 9001 metre, 9002 foot, 9003 US survey foot). */
const metresIn: Record<number, number> = { 9001: 1, 9002: 0.3048, 9003: 1200 / 3937 };

/** Reads the ground about a position from a GeoTIFF in EPSG:4326. Only what is needed of a large file is decoded. */
export async function readGeotiff(source: ArrayBuffer | Blob, about: Position): Promise<TerrainReading> {
  let image: GeoTIFFImage;
  try {
    const file = source instanceof ArrayBuffer ? await fromArrayBuffer(source) : await fromBlob(source);
    image = await file.getImage();
  } catch {
    return { ok: false, reason: 'this is no TIFF file, or a damaged one' };
  }
  let keys: Record<string, unknown>;
  let affine: Affine | null;
  try {
    keys = image.getGeoKeys() ?? {};
    affine = affineOf(image, keys);
  } catch {
    return { ok: false, reason: 'what it says of where it lies is damaged' };
  }
  const doubt = systemDoubt(keys);
  if (doubt) return { ok: false, reason: doubt };
  const unit = metresIn[Number(keys['VerticalUnitsGeoKey'] ?? 9001)];
  if (unit === undefined) return { ok: false, reason: 'its heights are neither in metres nor in feet' };
  if (!affine)
    return { ok: false, reason: 'its grid does not run north up, or it does not say where it lies' };
  const window = windowAbout(affine, image.getWidth(), image.getHeight(), about);
  if (!window) return { ok: false, reason: 'it does not cover the airfield' };
  try {
    return { ok: true, grid: await readWindow(image, affine, window, unit) };
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return { ok: false, reason: `its heights cannot be read: ${why}` };
  }
}

/** Why the positions of a file are not longitude and latitude on WGS84; null when they are. */
function systemDoubt(keys: Record<string, unknown>): string | null {
  const projected = keys['ProjectedCSTypeGeoKey'] ?? keys['ProjectedCRSGeoKey'];
  const geographic = keys['GeographicTypeGeoKey'] ?? keys['GeodeticCRSGeoKey'];
  // Which sort of system it is may be left out where the system itself is named.
  const sort = keys['GTModelTypeGeoKey'] ?? (projected === undefined ? 2 : 1);
  if (Number(sort) === 2 && Number(geographic) === 4326) return null;
  const system = Number(projected ?? geographic);
  const found = [NaN, 32767, 4326].includes(system) ? 'another system' : `EPSG:${system}`;
  return `its coordinates must be longitude and latitude (EPSG:4326), and they are in ${found}; convert it first`;
}

/** Columns and rows of a file, the last ones excluded. */
type Window = readonly [left: number, top: number, right: number, bottom: number];

function windowAbout(
  { west, north, stepLng, stepLat }: Affine,
  width: number,
  height: number,
  [lng, lat]: Position,
): Window | null {
  const wide = around / Math.max(0.05, Math.cos(lat * RAD));
  const east = wrap180(lng - west);
  const share = Math.min(1, Math.sqrt((mostSamples * stepLng * stepLat) / (4 * wide * around)));
  const left = Math.max(0, Math.floor((east - wide * share) / stepLng));
  const right = Math.min(width, Math.ceil((east + wide * share) / stepLng) + 1);
  const top = Math.max(0, Math.floor((north - lat - around * share) / stepLat));
  const bottom = Math.min(height, Math.ceil((north - lat + around * share) / stepLat) + 1);
  return left < right && top < bottom ? [left, top, right, bottom] : null;
}

async function readWindow(
  image: GeoTIFFImage,
  affine: Affine,
  window: Window,
  unit: number,
): Promise<ReadElevations> {
  const [left, top, right, bottom] = window;
  const [band] = await image.readRasters({ window: [...window], samples: [0], interleave: false });
  if (!band) throw new Error('there is no band');
  const missing = noData(image);
  const heights = Float32Array.from(band as ArrayLike<number>, (height) =>
    height === missing || !(Math.abs(height * unit) < 12_000) ? NaN : height * unit,
  );
  return {
    columns: right - left,
    rows: bottom - top,
    west: affine.west + left * affine.stepLng,
    north: affine.north - top * affine.stepLat,
    stepLng: affine.stepLng,
    stepLat: affine.stepLat,
    heights,
  };
}

/** The number that stands for an unknown height. Read here, since the library cuts off a last digit where no zero byte ends the text. */
function noData(image: GeoTIFFImage): number | null {
  const text: unknown = image.fileDirectory.getValue('GDAL_NODATA');
  const number = typeof text === 'string' ? Number.parseFloat(text.replaceAll('\0', '')) : NaN;
  // What is written with many digits is kept in single precision.
  const single = image.getSampleFormat(0) === 3 && image.getBitsPerSample(0) === 32;
  return Number.isNaN(number) ? null : single ? Math.fround(number) : number;
}
