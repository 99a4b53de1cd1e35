import { reachLines } from '../../sweep/reach-lines';
import { dayOf, type PlaceLists } from './place-lists';

/** Lines of equal value of the layer (GeoJSON, RFC 7946): `level` in `unit`. `credits`, a member of the whole, has whose data are behind it. */
export async function placeContours(lists: PlaceLists): Promise<string> {
  const { values, area, layer, site, credits } = lists;
  const date = dayOf(lists);
  const known = Float64Array.from(values, (value) => (Number.isFinite(value) ? value : 0));
  const lines = await reachLines(known, area, layer.levels);
  const features = lines.flatMap(({ focalLength: level, lines: ways }) =>
    ways.map((coordinates) => ({
      type: 'Feature',
      properties: { site, layer: layer.name, level, unit: layer.unit, date },
      geometry: { type: 'LineString', coordinates },
    })),
  );
  return `${JSON.stringify({ type: 'FeatureCollection', credits, features })}\n`;
}
