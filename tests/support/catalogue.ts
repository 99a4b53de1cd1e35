import { readFile } from 'node:fs/promises';
import { buildCatalogue, cataloguePaths } from '../../src/cli/build-catalogue';
import { decodeCatalogue } from '../../src/imports/catalogue/decode';
import { decodeFrequencies } from '../../src/imports/catalogue/decode-frequencies';
import { decodeRunways } from '../../src/imports/catalogue/decode-runways';
import type { CatalogueFiles } from '../../src/imports/catalogue/encode';
import type {
  AirfieldToStart,
  ByAirfield,
  Catalogue,
  CatalogueFrequency,
  CatalogueRunway,
  Loaded,
} from '../../src/imports/catalogue/types';

/** The three files of one build, read. */
export interface WholeCatalogue {
  readonly catalogue: Catalogue;
  readonly runways: ByAirfield<CatalogueRunway>;
  readonly frequencies: ByAirfield<CatalogueFrequency>;
}

/** An airfield that is whole, as when every file was there. */
export type WholeAirfield = AirfieldToStart & {
  readonly runways: readonly CatalogueRunway[];
  readonly frequencies: readonly CatalogueFrequency[];
};

function valueOf<T>(loaded: Loaded<T>): T {
  if (!loaded.ok) throw new Error(loaded.reason);
  return loaded.value;
}

/** Files as they arrive: parsed JSON. */
export function wholeCatalogue(files: Readonly<Record<keyof CatalogueFiles, unknown>>): WholeCatalogue {
  const catalogue = valueOf(decodeCatalogue(files.catalogue));
  return {
    catalogue,
    runways: valueOf(decodeRunways(files.runways, catalogue)),
    frequencies: valueOf(decodeFrequencies(files.frequencies, catalogue)),
  };
}

export const wholeAirfield = (
  { catalogue, runways, frequencies }: WholeCatalogue,
  index: number,
): WholeAirfield => ({
  ...catalogue.airfieldAt(index),
  runways: runways(index),
  frequencies: frequencies(index),
});

/** The catalogue of the real data, built when it is missing or out of date. */
export async function realCatalogue(): Promise<WholeCatalogue> {
  await buildCatalogue();
  const read = async (name: keyof CatalogueFiles): Promise<unknown> =>
    JSON.parse(await readFile(cataloguePaths[name], 'utf8'));
  return wholeCatalogue({
    catalogue: await read('catalogue'),
    runways: await read('runways'),
    frequencies: await read('frequencies'),
  });
}

export const everyAirfield = (whole: WholeCatalogue): WholeAirfield[] =>
  Array.from({ length: whole.catalogue.size }, (_, i) => wholeAirfield(whole, i));
