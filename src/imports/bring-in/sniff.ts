/** What a file is, as far as its name and its first and last characters tell. */
export type FileIs =
  'survey' | 'archive' | 'overpass' | 'geojson' | 'osm-xml' | 'track-xml' | 'table' | 'unknown';

/** As many characters of each end of a file as are looked at. */
export const sniffed = 65_536;

const surveyKinds = 'runway|standing-spot|obstacle|no-go|apron|taxi-route|flight-path|log-entry|ground-use';
const ours = new RegExp(`"sunside"\\s*:|"kind"\\s*:\\s*"(?:${surveyKinds})"`);
/** Keys of OpenStreetMap's tags, its ids, and what lines with times have. */
const mapped =
  /"(?:aeroway|building|highway|barrier|landuse|natural|leisure|amenity|coordTimes|coordinateProperties|@id)"\s*:/;
const withThird = /"LineString"[^}]{0,400}?\[\s*-?[\d.]+\s*,\s*-?[\d.]+\s*,\s*-?[\d.]/;

/**
 * `head` and `tail`: the first and last characters of the file. GeoJSON is a survey, as the program has always opened
 * it, unless it plainly is a map's or a recorder's.
 */
export function sniff(name: string, head: string, tail: string): FileIs {
  if (/\.zip$/i.test(name) || head.startsWith('PK\u0003\u0004')) return 'archive';
  const start = head.replace(/^\uFEFF/, '').trimStart();
  if (start.startsWith('<')) return xmlIs(start);
  if (start.startsWith('{')) {
    if (ours.test(start) || ours.test(tail)) return 'survey';
    if (/"elements"\s*:\s*\[/.test(start)) return 'overpass';
    return mapped.test(start) || withThird.test(start) ? 'geojson' : 'survey';
  }
  if (start.startsWith('[') || /\.(geo)?json$/i.test(name)) return 'survey';
  const [line = ''] = /[^\r\n]*/.exec(start) ?? [];
  return /\.(csv|tsv|txt)$/i.test(name) || /[,;\t|]/.test(line) ? 'table' : 'unknown';
}

function xmlIs(start: string): FileIs {
  const [, root = ''] = /<(?!\?|!)\s*(?:\w+:)?([\w-]+)/.exec(start) ?? [];
  if (root === 'osm' || root === 'osmChange') return 'osm-xml';
  return root === 'gpx' || root === 'kml' ? 'track-xml' : 'unknown';
}

export const unknownFile =
  'This is no file that can be brought in. OpenStreetMap extracts (.osm, or JSON from Overpass, or GeoJSON), airport tables (runways.csv), GPX, KML, GeoJSON and CSV flights can be.';
