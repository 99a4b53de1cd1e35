import { closeSync, openSync, readdirSync, readSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { findPasses, type Pass } from '../figures/log/find-passes';
import { frameOf, type PhotoFrame } from '../figures/log/frame-time';
import { unreadPhoto, type PhotoRecord } from '../survey/photo-record';
import { predictPass } from '../figures/log/predict';
import type { EndsByUse } from '../figures/movements/ends-of';
import type { ElevationGrid } from '../figures/sight/terrain';
import { inUse } from '../figures/traffic/in-use';
import type { Sample } from '../figures/types';
import { headOf, readPhoto } from '../imports/photos/read-photo';
import type { Contents } from '../survey/contents';
import { isoInstant } from '../time/local-time';
import type { Read } from './arguments';

/** Photographs in a folder and the folders in it, relative to it, in the order of their names. */
export function photosIn(folder: string): Read<readonly string[]> {
  try {
    if (!statSync(folder).isDirectory()) return { ok: false, reason: `--photos: ${folder} is no folder` };
    const names = readdirSync(folder, { recursive: true, encoding: 'utf8', withFileTypes: true })
      .filter((entry) => entry.isFile() && /\.jpe?g$/i.test(entry.name))
      .map((entry) => join(entry.parentPath, entry.name).slice(join(folder, '/').length));
    return { ok: true, value: names.sort() };
  } catch (error) {
    return {
      ok: false,
      reason: `--photos: ${folder} cannot be read: ${error instanceof Error ? error.message : String(error)}`,
    };
  }
}

/** What the photographs in a folder are of, as the `figures` command prints it (design part two, section 12). */
export async function photosJson(
  folder: string,
  names: readonly string[],
  contents: Contents,
  wind: EndsByUse | null,
  terrain: ElevationGrid | null,
) {
  const frames: PhotoFrame[] = [];
  for (const name of names) frames.push(frameOf(await recordOf(folder, name), contents.site.timeZone));
  // What was typed holds for all of them; the survey's own wind holds for its hours.
  const looked = wind ? { ...contents, weather: null } : contents;
  const { passes, left } = findPasses(frames, looked, wind ?? inUse(contents, 0));
  const entries = new Map<string, ReturnType<typeof entryOf>>();
  for (const frame of left) entries.set(frame.record.file, entryOf(frame, null, null, null));
  passes.forEach((pass, i) => {
    const instants = pass.frames.map(({ instant }) => instant ?? 0);
    const samples = predictPass(pass, instants, contents, terrain);
    pass.frames.forEach((frame, f) =>
      entries.set(frame.record.file, entryOf(frame, i + 1, pass, samples[f] ?? null)),
    );
  });
  return names.flatMap((name) => entries.get(name) ?? []);
}

const entryOf = (
  { record, instant, doubts }: PhotoFrame,
  number: number | null,
  pass: Pass | null,
  sample: Sample | null,
) => ({
  file: record.file,
  pass: number,
  time: instant === null ? null : isoInstant(instant),
  spot: pass?.spot ?? null,
  path: pass?.path ?? null,
  subject: pass?.subject ?? null,
  focalLength: record.focalLength,
  needed: pass?.subject == null ? null : (sample?.focalLength ?? null),
  light: sample?.light ?? null,
  lightAngle: sample?.lightAngle ?? null,
  doubts: [...doubts, ...(pass?.doubts ?? []).map(({ words }) => words)],
});

async function recordOf(folder: string, name: string): Promise<PhotoRecord> {
  let head: ArrayBuffer;
  try {
    head = headFrom(join(folder, name));
  } catch {
    return unreadPhoto(name, 'The file cannot be opened.');
  }
  return readPhoto(name, head);
}

function headFrom(path: string): ArrayBuffer {
  const handle = openSync(path, 'r');
  try {
    const head = new Uint8Array(headOf);
    const length = readSync(handle, head, 0, headOf, 0);
    return head.slice(0, length).buffer;
  } finally {
    closeSync(handle);
  }
}
