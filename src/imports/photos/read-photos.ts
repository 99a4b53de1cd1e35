import type { PhotoRecord } from '../../survey/photo-record';
import { unreadPhoto } from '../../survey/photo-record';
import { pairFiles } from './pair-files';
import { sidecarRating } from './rating';
import { headOf, readPhoto } from './read-photo';

/** Bytes of an XMP file that are looked at: one of more is none. */
const longestSidecar = 1_000_000;

/** Where a file lies within the folder that was dropped, else its name. */
const nameOf = (file: File): string => file.webkitRelativePath || file.name;

/** Reads the beginnings of photographs, one after the other; pictures themselves are never read. */
export async function readPhotos(
  files: readonly File[],
  progress: (done: number, of: number) => void,
): Promise<readonly PhotoRecord[]> {
  const frames = pairFiles(files, nameOf);
  const records: PhotoRecord[] = [];
  for (const { photo, sidecar } of frames) {
    records.push(await readOne(photo, sidecar));
    progress(records.length, frames.length);
  }
  return records;
}

async function readOne(photo: File, sidecar: File | null): Promise<PhotoRecord> {
  try {
    const record = await readPhoto(nameOf(photo), await photo.slice(0, headOf).arrayBuffer());
    if (!sidecar || sidecar.size > longestSidecar) return record;
    return { ...record, rating: sidecarRating(await sidecar.text()) ?? record.rating };
  } catch {
    return unreadPhoto(nameOf(photo), 'The file cannot be opened any more.');
  }
}
