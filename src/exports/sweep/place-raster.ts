import { mapped } from '../../figures/geometry/earth';
import { dayOf, type PlaceLists } from './place-lists';
import { placeholders, tags, withTexts } from './tiff-texts';

/** What stands for nothing, as GIS expect it. */
const noData = -9999;

/**
 * The cells as a GeoTIFF (OGC 19-008r4) of 32-bit floats in WGS 84 longitude and latitude, rows from the north. Each pixel
 * takes the value of the cell that its middle lies in. The tag Copyright has whose data are behind it.
 */
export async function placeRaster(lists: PlaceLists): Promise<ArrayBuffer> {
  const { values, area, corners, site, layer, credits } = lists;
  const { writeArrayBuffer } = await import('geotiff');
  const lngs = corners.map(([lng]) => lng);
  const lats = corners.map(([, lat]) => lat);
  const [west, north] = [Math.min(...lngs), Math.max(...lats)];
  const size = area.count;
  const [perColumn, perRow] = [(Math.max(...lngs) - west) / size, (north - Math.min(...lats)) / size];
  const pixels = new Float32Array(size * size);
  for (let row = 0; row < size; row++)
    for (let column = 0; column < size; column++) {
      const [x, y] = mapped(area.frame, [west + (column + 0.5) * perColumn, north - (row + 0.5) * perRow]);
      const [c, r] = [Math.floor((x - area.west) / area.cell), Math.floor((y - area.south) / area.cell)];
      const value = c < 0 || r < 0 || c >= size || r >= size ? NaN : (values[r * size + c] as number);
      pixels[row * size + column] = Number.isFinite(value) ? value : noData;
    }
  const metadata = {
    width: size,
    height: size,
    BitsPerSample: [32],
    SampleFormat: [3],
    ModelPixelScale: [perColumn, perRow, 0],
    ModelTiepoint: [0, 0, 0, west, north, 0],
    GTModelTypeGeoKey: 2,
    GTRasterTypeGeoKey: 1,
    GeographicTypeGeoKey: 4326,
    GDAL_NODATA: String(noData),
  };
  return withTexts(writeArrayBuffer(pixels, { ...metadata, ...placeholders(credits.length > 0) }), {
    [tags.ImageDescription]: `${site}: ${layer.name.toLowerCase()}${layer.unit && `, ${layer.unit}`}, ${dayOf(lists)}`,
    [tags.Copyright]: credits.join(' '),
  });
}
