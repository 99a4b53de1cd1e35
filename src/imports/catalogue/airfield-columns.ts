import { placesOnCurve, wholeCurve } from './along-curve';
import { fromCodes } from './codes';
import { perDegree, placesPerDegree, type CatalogueFile } from './columns';
import { outside } from './consistent';
import { fromDigits } from './digits';
import { fileOrderOf } from './order';
import { fromShorthand } from './shorthand';
import { airfieldKinds, type Numbers } from './types';
import { lines, sums } from './unpack';

/** The file's columns made readable by place in the catalogue: digits and codes read, differences summed. */
export interface Columns {
  readonly kinds: Numbers;
  readonly regionWords: readonly string[];
  readonly regions: Numbers;
  /** As they are kept: `fromUsualCase` gives what is shown. */
  readonly names: readonly string[];
  readonly towns: readonly string[];
  readonly icao: readonly string[];
  /** With the signs of `airfield-at.ts`. */
  readonly iata: readonly string[];
  readonly local: readonly string[];
  /** Millionths of a degree. */
  readonly lat: Numbers;
  readonly lng: Numbers;
  /** Feet above mean sea level. */
  readonly elevation: Numbers;
  readonly runways: Numbers;
  readonly located: Numbers;
}

/** The columns, or which of them cannot be read. */
export function airfieldColumns({ airfields }: CatalogueFile): Columns | string {
  const towns = townsOf(airfields.towns);
  const names = namesOf(airfields.names, towns);
  const count = names.length;
  if (towns.length !== count) return `airfields.towns has ${towns.length} entries, ${count} were expected`;
  const numbers = read(['kinds', 'elevation', 'runways'], 'digits', count, (name) =>
    fromDigits(airfields[name], count),
  );
  if (typeof numbers === 'string') return numbers;
  const codes = read(['icao', 'iata', 'local'], 'codes', count, (name) => fromCodes(airfields[name], count));
  if (typeof codes === 'string') return codes;
  const regionWords = fromCodes(airfields.regions, airfields.regionCounts.length);
  if (!regionWords) return `the codes of regions are not those of ${airfields.regionCounts.length} regions`;
  const { kinds, elevation, runways } = numbers;
  const wrong =
    outside('kinds', kinds, airfieldKinds.length - 1) ??
    outside('airfields.runways', runways, airfields.runwayCounts.length / 2 - 1);
  if (wrong !== null) return wrong;
  const regions = spread(airfields.regionCounts, count);
  if (!regions) return `regionCounts do not make ${count} airfields`;
  const along = alongOf(airfields, regions);
  if (typeof along === 'string') return along;
  const { lng, lat } = placesOnCurve(along);
  const order = fileOrderOf(kinds);
  const counts = (k: 0 | 1) =>
    numbersInOrder(runways, order, (pair) => airfields.runwayCounts[2 * pair + k] ?? 0);
  return {
    kinds: numbersInOrder(kinds, order),
    regionWords,
    regions: numbersInOrder(regions, order),
    names: textsInOrder(names, order),
    towns: textsInOrder(towns, order),
    icao: textsInOrder(codes.icao, order),
    iata: textsInOrder(codes.iata, order),
    local: textsInOrder(codes.local, order),
    lat: numbersInOrder(lat, order, toMillionths),
    lng: numbersInOrder(lng, order, toMillionths),
    elevation: numbersInOrder(sums(elevation), order),
    runways: counts(0),
    located: counts(1),
  };
}

const toMillionths = (n: number) => n * (perDegree / placesPerDegree);
const asItIs = (n: number) => n;

/** A column of the file -> the same in the order of the catalogue. */
function numbersInOrder(column: Numbers, order: Uint32Array, to = asItIs): Int32Array {
  const out = new Int32Array(order.length);
  for (let i = 0; i < order.length; i++) out[i] = to(column[order[i] as number] as number);
  return out;
}

function textsInOrder(column: readonly string[], order: Uint32Array): string[] {
  const out = new Array<string>(order.length);
  for (let i = 0; i < order.length; i++) out[i] = column[order[i] as number] as string;
  return out;
}

/** Columns of one kind, or which of them is not what it should be. */
function read<N extends string, T>(
  names: readonly N[],
  what: string,
  count: number,
  from: (name: N) => T | null,
): Record<N, T> | string {
  const columns: Partial<Record<N, T>> = {};
  for (const name of names) {
    const column = from(name);
    if (column === null) return `the ${what} of ${name} are not those of ${count} airfields`;
    columns[name] = column;
  }
  return columns as Record<N, T>;
}

/** Counts -> for each of what is counted, whose count it is in; null when they do not make `total`. */
function spread(counts: readonly number[], total: number): Uint32Array | null {
  const out = new Uint32Array(total);
  let from = 0;
  for (const [place, count] of counts.entries()) {
    if (count < 0 || count > total - from) return null;
    out.fill(place, from, (from += count));
  }
  return from === total ? out : null;
}

/** How far along the curve each airfield is: `regions` tells where one begins. */
function alongOf({ begins, steps }: CatalogueFile['airfields'], regions: Uint32Array): Float64Array | string {
  let firsts = 0;
  for (let i = 0; i < regions.length; i++) if (regions[i] !== regions[i - 1]) firsts++;
  const first = fromDigits(begins, firsts);
  const step = fromDigits(steps, regions.length - firsts);
  if (!first || !step) return `the digits of begins or steps are not those of ${firsts} regions`;
  const starts = sums(first);
  const odd = outside('begins', starts, wholeCurve - 1) ?? outside('steps', step, wholeCurve - 1);
  if (odd !== null) return odd;
  const out = new Float64Array(regions.length);
  let [region, further] = [0, 0];
  for (let i = 0; i < regions.length; i++) {
    const isFirst = regions[i] !== regions[i - 1];
    out[i] = isFirst ? (starts[region++] as number) : (out[i - 1] as number) + (step[further++] as number);
  }
  return out;
}

function townsOf(text: string): string[] {
  const towns = lines(text);
  for (let i = 0; i < towns.length; i++) if (towns[i] === '=') towns[i] = towns[i - 1] ?? '';
  return towns;
}

function namesOf(text: string, towns: readonly string[]): string[] {
  const names = lines(fromShorthand(text));
  for (let i = 0; i < names.length; i++) {
    const line = names[i] as string;
    if (line.startsWith('=')) names[i] = (towns[i] ?? '') + line.slice(1);
  }
  return names;
}
