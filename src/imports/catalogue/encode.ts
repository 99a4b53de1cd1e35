import { metresToFeet } from '../../units/length';
import {
  catalogueFormat,
  flagKinds,
  locatedEnds,
  perDegree,
  placesPerDegree,
  type CatalogueFile,
  type FrequenciesFile,
  type RunwaysFile,
} from './columns';
import { toDigits } from './digits';
import { isLocated } from './doubts';
import { impliedDesignator } from './implied-designator';
import {
  airfieldKinds,
  type Airfield,
  type CatalogueEnd,
  type CatalogueFrequency,
  type CatalogueRunway,
  type RunwayFlag,
} from './types';

export interface AirfieldRow extends Omit<Airfield, 'index' | 'country' | 'runwayCount' | 'locatedCount'> {
  readonly runways: readonly CatalogueRunway[];
  readonly frequencies: readonly CatalogueFrequency[];
}

/** What is built together, each a file of its own. */
export interface CatalogueFiles {
  readonly catalogue: CatalogueFile;
  readonly runways: RunwaysFile;
  readonly frequencies: FrequenciesFile;
}

const feet = (m: number) => Math.round(metresToFeet(m));
const micro = (deg: number) => Math.round(deg * perDegree);
const places = (deg: number) => Math.round(deg * placesPerDegree);
const microPlace = (deg: number) => places(deg) * (perDegree / placesPerDegree);
const lines = (texts: readonly string[]) => texts.map((t) => t.replaceAll('\n', ' ')).join('\n');

function runs(values: readonly number[]): number[] {
  const out: number[] = [];
  for (const value of values) {
    if (out.length > 0 && out[out.length - 2] === value) out[out.length - 1] = (out.at(-1) ?? 0) + 1;
    else out.push(value, 1);
  }
  return out;
}

const differences = (values: readonly number[]) => values.map((value, i) => value - (values[i - 1] ?? 0));

/** Distinct texts and the place of each value among them. */
function dictionary(values: readonly string[]): { words: string[]; places: number[] } {
  const words = [...new Set(values)];
  const at = new Map(words.map((word, i) => [word, i]));
  return { words, places: values.map((value) => at.get(value) ?? 0) };
}

function figureOf(flag: RunwayFlag): number {
  switch (flag.kind) {
    case 'zero-length':
      return 0;
    case 'length-off':
    case 'at-thresholds':
      return Math.round(flag.measured);
    case 'far-away':
      return Math.round(flag.away);
    case 'ends-swapped':
    case 'designator-off':
      return Math.round(flag.magnetic);
  }
}

/** Local codes in one line; a code that is the ICAO code without its first letter (GDK of KGDK) is a star. */
const localLine = ({ icao, localCodes }: AirfieldRow) =>
  localCodes.map((code) => (icao !== null && code === icao.slice(1) ? '*' : code)).join(' ');

/** An equals sign stands for the town where the name begins with it. */
const nameLine = ({ name, town }: AirfieldRow) =>
  town !== '' && name.startsWith(town) ? `=${name.slice(town.length)}` : name;

/** Airfields, in the order in which they shall be found -> the compact files. Heights in whole feet, places in 1e-4, ends in 1e-6 degrees. */
export function encodeCatalogue(
  airfields: readonly AirfieldRow[],
  source: CatalogueFile['source'],
  builtBy: string,
): CatalogueFiles {
  return {
    catalogue: { format: catalogueFormat, source, builtBy, airfields: airfieldColumns(airfields) },
    runways: { format: catalogueFormat, builtBy, ...runwayColumns(airfields) },
    frequencies: { format: catalogueFormat, builtBy, ...frequencyColumns(airfields) },
  };
}

function airfieldColumns(airfields: readonly AirfieldRow[]): CatalogueFile['airfields'] {
  const regions = dictionary(airfields.map((a) => a.region));
  return {
    kindRuns: runs(airfields.map((a) => airfieldKinds.indexOf(a.kind))),
    regions: regions.words,
    regionRuns: runs(regions.places),
    names: lines(airfields.map(nameLine)),
    towns: lines(airfields.map((a) => a.town)),
    icao: lines(airfields.map((a) => a.icao ?? '')),
    iata: lines(airfields.map((a) => a.iata ?? '')),
    local: lines(airfields.map(localLine)),
    lat: toDigits(differences(airfields.map((a) => places(a.position[1])))),
    lng: toDigits(differences(airfields.map((a) => places(a.position[0])))),
    elevation: toDigits(airfields.map((a) => feet(a.elevation))),
    runways: airfields.map((a) => a.runways.length),
    located: airfields.map((a) => a.runways.filter(isLocated).length),
  };
}

function runwayColumns(airfields: readonly AirfieldRow[]): Omit<RunwaysFile, 'format' | 'builtBy'> {
  const runways = airfields.flatMap((a) => a.runways.map((r) => ({ ...r, airfield: a })));
  const surfaces = dictionary(runways.map((r) => r.surface));
  const ends = runways.flatMap((r) =>
    r.ends.flatMap((end, i) =>
      end ? [{ end, other: i === 1 ? r.ends[0] : null, airfield: r.airfield }] : [],
    ),
  );
  return {
    surfaces: surfaces.words,
    runways: {
      length: runways.map((r) => feet(r.length ?? 0)),
      // Of a runway that is not located only the length is of use to who draws it.
      width: runways.map((r) => ((r.ends[0] ?? r.ends[1]) ? feet(r.width ?? 0) : 0)),
      surface: surfaces.places,
      located: runways.map((r) =>
        locatedEnds.findIndex(([a, b]) => a === (r.ends[0] !== null) && b === (r.ends[1] !== null)),
      ),
    },
    ends: {
      designators: lines(ends.map(({ end, other }) => designatorLine(end, other))),
      lat: ends.map(({ end, airfield }) => micro(end.position[1]) - microPlace(airfield.position[1])),
      lng: ends.map(({ end, airfield }) => micro(end.position[0]) - microPlace(airfield.position[0])),
      elevation: ends.map(({ end, airfield }) =>
        end.elevation === null ? null : feet(end.elevation) - feet(airfield.elevation),
      ),
      displaced: ends.map(({ end }) => feet(end.displaced)),
    },
    flags: runways.flatMap((r, i) => r.flags.flatMap((f) => [i, flagKinds.indexOf(f.kind), figureOf(f)])),
  };
}

function frequencyColumns(airfields: readonly AirfieldRow[]): Omit<FrequenciesFile, 'format' | 'builtBy'> {
  const frequencies = airfields.flatMap((a, i) => a.frequencies.map((f) => ({ ...f, i })));
  const uses = dictionary(frequencies.map((f) => f.use));
  return {
    uses: uses.words,
    frequencies: frequencies.flatMap((f, i) => [f.i, uses.places[i] ?? 0, Math.round(f.mhz * 1000)]),
  };
}

/** An equals sign where the other end's designator already says it. */
const designatorLine = (end: CatalogueEnd, other: CatalogueEnd | null) =>
  other !== null && end.designator === impliedDesignator(other.designator) ? '=' : end.designator;
