import { isObject, type Json } from '../../survey/json';
import { AirfieldTablesSource } from '../airfield-tables/source';
import { readOpenDataTable, type OpenDataTable } from '../airfield-tables/tables';
import { isArea, isWanted } from '../osm/classify';
import type { OsmReading } from '../osm/elements';
import { mappedThings } from '../osm/mapped';
import { readOsmGeoJson } from '../osm/osm-geojson';
import { readOsmXml } from '../osm/osm-xml';
import { readOverpass } from '../osm/overpass';
import { OsmSource } from '../osm/source';
import { readCsv } from '../tables/csv';
import { decodeTable } from '../tables/decode';
import { TracksSource } from '../tracks/source';
import { tracksOfFeatures } from '../tracks/track-geojson';
import { isTrackTable, readTrackTable } from '../tracks/track-table';
import { readTrackXml, type TracksReading } from '../tracks/track-xml';
import { sniff, sniffed, unknownFile } from './sniff';
import type { ReadResult, ReadSource } from './types';

/** Bytes by which a file that stands in memory as a whole is refused: .osm files are read piece by piece. */
const largestWhole = 200_000_000;

export interface ReadNeeds {
  /** A share of the file, 0 to 1. */
  readonly progress: (share: number) => void;
  /** ms since 1970: the day whose magnetic declination names runways. */
  readonly now: number;
}

/** Reads files that belong together (the two tables of airports and runways); every one that can be read comes in. */
export async function readFiles(
  files: readonly File[],
  needs: ReadNeeds,
): Promise<{ readonly sources: readonly ReadSource[]; readonly refused: readonly string[] }> {
  const sources: ReadSource[] = [];
  const tables: OpenDataTable[] = [];
  const refused: string[] = [];
  for (const file of files) {
    const read = await readFile(file, needs);
    if ('table' in read) tables.push(read);
    else if (read.ok) sources.push(read.source);
    else refused.push(`${file.name}: ${read.reason}`);
  }
  if (tables.length > 0) sources.unshift(new AirfieldTablesSource(tables, needs.now));
  return { sources, refused };
}

async function readFile(file: File, needs: ReadNeeds): Promise<ReadResult | OpenDataTable> {
  const head = await file.slice(0, sniffed).text();
  if (head.trim() === '') return { ok: false, reason: 'the file is empty.' };
  const is = sniff(file.name, head, await file.slice(-sniffed).text());
  if (is === 'osm-xml') return ofMap(await readOsmXml(pieces(file, needs.progress)), needs);
  if (is === 'unknown') return { ok: false, reason: /\.kmz$/i.test(file.name) ? zipped : unknownFile };
  if (is === 'archive') return { ok: false, reason: zipped };
  if (is === 'survey')
    return { ok: false, reason: 'this is a survey, or GeoJSON without tags of a map: use Open for it.' };
  if (file.size > largestWhole)
    return {
      ok: false,
      reason: 'the file is larger than 200 MB. Cut out the neighbourhood of the airfield.',
    };
  let text = '';
  if (is === 'table') text = decodeTable(new Uint8Array(await file.arrayBuffer()));
  else for await (const piece of pieces(file, needs.progress)) text += piece;
  switch (is) {
    case 'track-xml':
      return ofTracks(readTrackXml(text));
    case 'table':
      return ofTable(text);
    case 'overpass':
    case 'geojson':
      return ofJson(text, needs);
  }
}

const zipped = 'this is an archive. Unpack it, and bring in the file that is in it.';

function ofTable(text: string): ReadResult | OpenDataTable {
  const csv = readCsv(text);
  const table = readOpenDataTable(csv);
  if (table) return table;
  const first = csv.rows[0]?.cells ?? [];
  if (isTrackTable(first)) return ofTracks(readTrackTable(csv));
  const flight = readTrackTable(csv);
  return {
    ok: false,
    reason: `${flight.ok ? '' : flight.reason} For runways, bring in runways.csv of the open airport data set.`,
  };
}

function ofJson(text: string, needs: ReadNeeds): ReadResult {
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    return { ok: false, reason: `the file is not JSON: ${error instanceof Error ? error.message : ''}.` };
  }
  if (!isObject(value)) return { ok: false, reason: 'the file holds no JSON object.' };
  if (Array.isArray(value['elements'])) return ofMap(readOverpass(value), needs);
  const features: readonly Json[] = Array.isArray(value['features'])
    ? (value['features'] as readonly Json[])
    : value['type'] === 'Feature'
      ? [value]
      : [];
  const map = readOsmGeoJson(features);
  if (map.things.length > 0) return { ok: true, source: new OsmSource(map, needs.now) };
  return ofTracks({ ok: true, read: tracksOfFeatures(features, 'm') });
}

function ofMap(read: OsmReading, { now }: ReadNeeds): ReadResult {
  if (!read.ok) return read;
  return { ok: true, source: new OsmSource(mappedThings(read.data, isWanted, isArea), now) };
}

const ofTracks = (read: TracksReading): ReadResult =>
  read.ok ? { ok: true, source: new TracksSource(read.read) } : read;

/** The text of a file piece by piece; a letter of several bytes is never cut. */
async function* pieces(file: File, progress: (share: number) => void): AsyncGenerator<string> {
  const decoder = new TextDecoder();
  const reader = file.stream().getReader();
  let read = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    read += value.byteLength;
    progress(read / file.size);
    yield decoder.decode(value, { stream: true });
  }
  yield decoder.decode();
}
