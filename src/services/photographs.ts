import type { PhotoRecord } from '../survey/photo-record';
import type { PhotosAnswer, PhotosRequest } from '../imports/photos/messages';
import type { Photographs } from '../ports/photographs';
import { droppedFiles } from '../storage/dropped-files';
import { pickFiles, saveFile } from '../storage/files';
import type { LogEntry } from '../survey/schema/log-entry';
import { tableFile } from './table-file';

const photoFiles = {
  mediaType: 'image/*',
  extensions: ['.jpg', '.jpeg', '.heic', '.heif', '.tif', '.tiff', '.dng', '.nef', '.cr2', '.arw', '.xmp'],
  description: 'Photographs and XMP files beside them',
} as const;

/** Photographs on this device: the part of the composition root that knows imports and files. */
export class DevicePhotographs implements Photographs {
  pick(): Promise<readonly File[]> {
    return pickFiles([photoFiles]);
  }

  dropped(items: DataTransferItemList): Promise<readonly File[]> {
    return droppedFiles(items);
  }

  read(
    files: readonly File[],
    progress: (done: number, of: number) => void,
    cancel: AbortSignal,
  ): Promise<readonly PhotoRecord[] | null> {
    const worker = new Worker(new URL('../imports/photos/worker.ts', import.meta.url), { type: 'module' });
    return new Promise<readonly PhotoRecord[] | null>((resolve, reject) => {
      cancel.addEventListener('abort', () => resolve(null));
      worker.addEventListener('message', ({ data }: MessageEvent<PhotosAnswer>) => {
        if ('records' in data) resolve(data.records);
        else if ('failed' in data) reject(new Error(data.failed));
        else progress(data.done, data.of);
      });
      worker.addEventListener('error', (event) =>
        reject(new Error(event.message || 'the worker could not be started')),
      );
      worker.postMessage({ files } satisfies PhotosRequest);
    }).finally(() => worker.terminate());
  }

  pictureOf(files: readonly File[], file: string): File | null {
    return files.find((f) => (f.webkitRelativePath || f.name) === file) ?? null;
  }

  async saveLog(entries: readonly LogEntry[]): Promise<void> {
    const { logTable } = await import('../exports/log-table');
    await saveFile(logTable(entries), 'log.csv', tableFile('Log (CSV)'), null);
  }
}
