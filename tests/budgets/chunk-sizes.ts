import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { gzipSync } from 'node:zlib';

const dist = resolve(import.meta.dirname, '../../dist');
export const recordFile = resolve(import.meta.dirname, 'chunk-sizes.json');

/** Compressed bytes of scripts, by the name of the chunk without its hash; chunks of one name are added up. */
export type ChunkSizes = Readonly<Record<string, number>>;

const sizeOf = (path: string) => gzipSync(readFileSync(path), { level: 9 }).length;

/** "assets/map-view-Bm04bzZb.js" -> "map-view": the hash is of the content, the name is not. */
const nameOf = (file: string) => file.replace(/-[\w-]{8}\.js$/, '');

export function builtSizes(): ChunkSizes {
  const sizes: Record<string, number> = {};
  const files = readdirSync(join(dist, 'assets')).filter((file) => file.endsWith('.js'));
  for (const file of files.sort()) {
    const name = nameOf(file);
    sizes[name] = (sizes[name] ?? 0) + sizeOf(join(dist, 'assets', file));
  }
  return sizes;
}

/** Compressed bytes of all scripts that the page loads before anything is asked for: the map library is not among them. */
export function sizeAtStart(): number {
  const html = readFileSync(join(dist, 'index.html'), 'utf8');
  const named = [...html.matchAll(/<(?:script|link rel="modulepreload")[^>]*?(?:src|href)="([^"]+\.js)"/g)];
  return named.reduce((sum, match) => sum + sizeOf(join(dist, match[1] ?? '')), 0);
}

/** Bytes by which a chunk may grow before somebody has to look at it. */
export const mayGrowBy = 1000;

/** What has grown by more than may be overlooked, in words. */
export function growth(recorded: ChunkSizes, built: ChunkSizes): string[] {
  return Object.entries(built)
    .filter(([name, size]) => size - (recorded[name] ?? 0) > mayGrowBy)
    .map(([name, size]) => `${name}: ${recorded[name] ?? 0} bytes recorded, ${size} built`);
}
