import { createHash } from 'node:crypto';
import { mkdir, readdir, readFile, rename, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { encodeCatalogue, type AirfieldRow } from '../imports/catalogue/encode';
import { catalogueCredit } from '../imports/catalogue/credit';
import type { CatalogueFile } from '../imports/catalogue/columns';
import { flagsOf } from '../imports/catalogue/flags';
import { dataPackage, dataVersion, withData } from './catalogue/open-data';
import { readAirfields } from './catalogue/read-airfields';
import { text } from './catalogue/values';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
export const cataloguePath = join(root, 'public', 'catalogue.json');

/** Whatever these files say goes into the catalogue: when one changes, it is built anew. */
const builders = [
  'cli/build-catalogue.ts',
  'cli/catalogue',
  'imports/catalogue',
  'figures/geometry',
  'units',
];

async function builderHash(): Promise<string> {
  const hash = createHash('sha256');
  for (const builder of builders) {
    const names = builder.endsWith('.ts')
      ? [builder]
      : (await readdir(join(root, builder))).sort().map((name) => join(builder, name));
    for (const name of names) hash.update(await readFile(join(root, name)));
  }
  return hash.digest('hex').slice(0, 16);
}

async function isUpToDate(version: string, builtBy: string): Promise<boolean> {
  try {
    const file = JSON.parse(await readFile(cataloguePath, 'utf8')) as Partial<CatalogueFile>;
    return file.builtBy === builtBy && file.source?.version === version;
  } catch {
    // Missing or broken: then it is built.
    return false;
  }
}

/** Builds `src/public/catalogue.json` from the data package, unless it is there and up to date. */
export async function buildCatalogue(): Promise<{ readonly built: boolean }> {
  const [version, builtBy] = await Promise.all([dataVersion(), builderHash()]);
  if (await isUpToDate(version, builtBy)) return { built: false };
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
  await mkdir(dirname(cataloguePath), { recursive: true });
  // Written beside and moved: two test processes may build at once, and none must read half a file.
  const beside = `${cataloguePath}.${process.pid}`;
  await writeFile(beside, JSON.stringify(encodeCatalogue(airfields, source, builtBy)));
  await rename(beside, cataloguePath);
  return { built: true };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await buildCatalogue();
