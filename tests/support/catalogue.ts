import { readFile } from 'node:fs/promises';
import { buildCatalogue, cataloguePath } from '../../src/cli/build-catalogue';
import { decodeCatalogue } from '../../src/imports/catalogue/decode';
import type { Airfield, Catalogue } from '../../src/imports/catalogue/types';

/** The catalogue of the real data, built when it is missing or out of date. */
export async function realCatalogue(): Promise<Catalogue> {
  await buildCatalogue();
  const result = decodeCatalogue(JSON.parse(await readFile(cataloguePath, 'utf8')));
  if (!result.ok) throw new Error(result.reason);
  return result.catalogue;
}

export const everyAirfield = (catalogue: Catalogue): Airfield[] =>
  Array.from({ length: catalogue.size }, (_, i) => catalogue.airfieldAt(i));
