import { createHash } from 'node:crypto';
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { encodeLand, type LandFile } from '../imports/land/land-file';
import { landSource, readLand } from './land/read-land';
import { simplifyRing } from './land/simplify';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
export const landPath = join(root, 'public', 'land.json');

/** Degrees: a pixel at zoom 5, where coasts begin to be looked at. Halves the file, and nobody sees it. */
const tolerance = 0.02;

/** Whatever these files say goes into the land: when one changes, it is built anew. */
const builders = [
  'cli/build-land.ts',
  'cli/land/read-land.ts',
  'cli/land/simplify.ts',
  'imports/land/land-file.ts',
];

async function builderHash(): Promise<string> {
  const hash = createHash('sha256');
  for (const file of [landSource, ...builders.map((name) => join(root, name))])
    hash.update(await readFile(file));
  return hash.digest('hex').slice(0, 16);
}

async function isUpToDate(builtBy: string): Promise<boolean> {
  try {
    return (JSON.parse(await readFile(landPath, 'utf8')) as Partial<LandFile>).builtBy === builtBy;
  } catch {
    return false;
  }
}

/** Builds `src/public/land.json` from the data package, unless it is there and up to date. */
export async function buildLand(): Promise<{ readonly built: boolean }> {
  const builtBy = await builderHash();
  if (await isUpToDate(builtBy)) return { built: false };
  const areas = (await readLand())
    .map((rings) => rings.map((ring) => simplifyRing(ring, tolerance)))
    // An island that is less than a pixel takes its lakes with it.
    .filter(([outer]) => outer !== null)
    .map((rings) => rings.filter((ring) => ring !== null));
  await mkdir(dirname(landPath), { recursive: true });
  // Written beside and moved: two processes may build at once, and none must read half a file.
  const beside = `${landPath}.${process.pid}`;
  await writeFile(beside, JSON.stringify(encodeLand(areas, builtBy)));
  await rename(beside, landPath);
  return { built: true };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await buildLand();
