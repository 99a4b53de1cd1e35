import { catalogueFormat, type CatalogueFile, type FrequenciesFile, type RunwaysFile } from './columns';
import { toDigits } from './digits';
import { airfieldColumns } from './encode-airfields';
import { dictionary, differences } from './encode-parts';
import { runwayColumns } from './encode-runways';
import { inCatalogueOrder } from './order';
import type { Airfield, CatalogueFrequency, CatalogueRunway } from './types';

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

/**
 * Airfields in any order -> the compact files, from which they come in that of `inCatalogueOrder`. Heights in whole feet,
 * places in 1e-4, ends in 1e-6 degrees.
 */
export function encodeCatalogue(
  airfields: readonly AirfieldRow[],
  source: CatalogueFile['source'],
  builtBy: string,
): CatalogueFiles {
  const listed = inCatalogueOrder(airfields);
  return {
    catalogue: { format: catalogueFormat, source, builtBy, airfields: airfieldColumns(listed) },
    runways: { format: catalogueFormat, builtBy, ...runwayColumns(listed) },
    frequencies: { format: catalogueFormat, builtBy, ...frequencyColumns(listed) },
  };
}

function frequencyColumns(airfields: readonly AirfieldRow[]): Omit<FrequenciesFile, 'format' | 'builtBy'> {
  const frequencies = airfields.flatMap((a, i) => a.frequencies.map((f) => ({ ...f, i })));
  const uses = dictionary(frequencies.map((f) => f.use));
  return {
    uses: uses.words,
    frequencies: {
      airfields: differences(frequencies.map((f) => f.i)),
      use: toDigits(uses.places),
      khz: frequencies.map((f) => Math.round(f.mhz * 1000)),
    },
  };
}
