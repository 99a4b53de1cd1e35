import * as v from 'valibot';
import { airfieldAt } from './airfield-at';
import { catalogueFileSchema, locatedEnds, perDegree, placesPerDegree, type CatalogueFile } from './columns';
import { fault, type Columns, type Triple } from './consistent';
import { searchTextOf } from './search-text';
import type { CatalogueResult } from './types';

/** The stored file (already parsed JSON) -> the catalogue, or why it cannot be used. Never throws. */
export function decodeCatalogue(json: unknown): CatalogueResult {
  const parsed = v.safeParse(catalogueFileSchema, json);
  if (!parsed.success) {
    const at = v.getDotPath(parsed.issues[0]);
    return {
      ok: false,
      reason: `The airfield catalogue does not fit this program${at ? ` (at ${at})` : ''}.`,
    };
  }
  const columns = columnsOf(parsed.output);
  const wrong = fault(columns);
  if (wrong !== null) return { ok: false, reason: `The airfield catalogue is damaged: ${wrong}.` };
  return {
    ok: true,
    catalogue: {
      size: columns.names.length,
      airfieldAt: (index) => airfieldAt(columns, index),
      searchText: searchTextOf(columns),
    },
  };
}

/** Ten times what there is in the world: a damaged count must not fill the memory. */
const mostAirfields = 1e6;

function spread(runs: readonly number[]): number[] {
  const out: number[] = [];
  for (let i = 0; i + 1 < runs.length; i += 2) {
    const count = Math.min(runs[i + 1] ?? 0, mostAirfields - out.length);
    for (let k = 0; k < count; k++) out.push(runs[i] ?? 0);
  }
  return out;
}

function sums(values: readonly number[]): number[] {
  let sum = 0;
  return values.map((value) => (sum += value));
}

/** Where each entry's share of another column begins, one more than there are entries. */
const begins = (counts: readonly number[]) => [0, ...sums(counts)];

/** Entries of `begins` -> for each place of the other column, the entry it belongs to. */
function owners(first: readonly number[]): number[] {
  const out: number[] = [];
  for (let i = 0; i + 1 < first.length; i++) {
    const end = Math.min(first[i + 1] ?? 0, mostAirfields);
    while (out.length < end) out.push(i);
  }
  return out;
}

const lines = (text: string, like: readonly unknown[]) =>
  text === '' && like.length === 0 ? [] : text.split('\n');

function triples(flat: readonly number[]): Map<number, Triple[]> {
  const out = new Map<number, Triple[]>();
  for (let i = 0; i + 2 < flat.length; i += 3) {
    const triple: Triple = [flat[i] ?? 0, flat[i + 1] ?? 0, flat[i + 2] ?? 0];
    const list = out.get(triple[0]);
    if (list) list.push(triple);
    else out.set(triple[0], [triple]);
  }
  return out;
}

const toMillionths = (n: number) => n * (perDegree / placesPerDegree);

function columnsOf(file: CatalogueFile): Columns {
  const { airfields, ends } = file;
  const lat = sums(airfields.lat).map(toMillionths);
  const lng = sums(airfields.lng).map(toMillionths);
  const firstRunway = begins(airfields.runways);
  const firstEnd = begins(file.runways.located.map((l) => (locatedEnds[l] ?? []).filter(Boolean).length));
  const airfieldOf = owners(firstRunway);
  const endAirfield = owners(firstEnd).map((r) => airfieldOf[r] ?? 0);
  const towns = lines(airfields.towns, lat);
  return {
    file,
    kinds: spread(airfields.kindRuns),
    regions: spread(airfields.regionRuns),
    names: lines(airfields.names, lat).map((line, i) =>
      line.startsWith('=') ? `${towns[i] ?? ''}${line.slice(1)}` : line,
    ),
    towns,
    icao: lines(airfields.icao, lat),
    iata: lines(airfields.iata, lat),
    local: lines(airfields.local, lat),
    lat,
    lng,
    firstRunway,
    firstEnd,
    designators: lines(ends.designators, ends.lat),
    endLat: ends.lat.map((d, e) => d + (lat[endAirfield[e] ?? 0] ?? 0)),
    endLng: ends.lng.map((d, e) => d + (lng[endAirfield[e] ?? 0] ?? 0)),
    flags: triples(file.flags),
    frequencies: triples(file.frequencies),
  };
}
