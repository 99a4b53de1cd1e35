import { createHash } from 'node:crypto';
import { mkdir, readdir, readFile, rename, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { encodeCatalogue, type AirfieldRow, type CatalogueFiles } from '../imports/catalogue/encode';
import { catalogueCredit } from '../imports/catalogue/credit';
import { flagsOf } from '../imports/catalogue/flags';
import { dataPackage, dataVersion, withData } from './catalogue/open-data';
import { readAirfields } from './catalogue/read-airfields';
import { text } from './catalogue/values';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const files = ['catalogue', 'runways', 'frequencies'] as const satisfies (keyof CatalogueFiles)[];
export const cataloguePaths = Object.fromEntries(
  files.map((name) => [name, join(root, 'public', `${name}.json`)]),
) as Readonly<Record<keyof CatalogueFiles, string>>;

/** Whatever these files say goes into the catalogue: when one changes, it is built anew. */
const builders = [
  'cli/build-catalogue.ts',
  'cli/catalogue',
  'imports/catalogue',
  'figures/geometry',
  'units',
];

async function builderHash(version: string): Promise<string> {
  const hash = createHash('sha256').update(version);
  for (const builder of builders) {
    const names = builder.endsWith('.ts')
      ? [builder]
      : (await readdir(join(root, builder))).sort().map((name) => join(builder, name));
    for (const name of names) hash.update(await readFile(join(root, name)));
  }
  return hash.digest('hex').slice(0, 16);
}

async function isUpToDate(builtBy: string): Promise<boolean> {
  try {
    const texts = await Promise.all(files.map((name) => readFile(cataloguePaths[name], 'utf8')));
    return texts.every((text) => (JSON.parse(text) as { builtBy?: string }).builtBy === builtBy);
  } catch {
    // Missing or broken: then it is built.
    return false;
  }
}

/** Builds the three files of the catalogue in `src/public` from the data package, unless they are up to date. */
export async function buildCatalogue(): Promise<{ readonly built: boolean }> {
  const version = await dataVersion();
  const builtBy = await builderHash(version);
  if (await isUpToDate(builtBy)) return { built: false };
  const airfields = await withData((query): AirfieldRow[] => {
    const day = text(query('select max(updated_at) as day from airports')[0]?.['day']).slice(0, 10);
    const instant = Date.parse(`${day}T00:00:00Z`);
    return readAirfields(query).map((airfield) => ({
      ...airfield,
      runways: airfield.runways.map((row) => {
        const { headings: _headings, ...runway } = row;
        return { ...runway, flags: flagsOf(row, airfield.position, airfield.elevation, instant) };
      }),
    }));
  });
  const source = {
    package: dataPackage,
    version,
    licence: catalogueCredit.licence,
    credit: catalogueCredit.text,
  };
  const encoded = encodeCatalogue(airfields, source, builtBy);
  for (const name of files) {
    const path = cataloguePaths[name];
    await mkdir(dirname(path), { recursive: true });
    // Written beside and moved: two test processes may build at once, and none must read half a file.
    const beside = `${path}.${process.pid}`;
    await writeFile(beside, JSON.stringify(encoded[name]));
    await rename(beside, path);
  }
  return { built: true };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await buildCatalogue();
