import type { PhotoRecord } from '../survey/photo-record';
import type { LogEntry } from '../survey/schema/log-entry';

/** Photographs on this device: built by services/photographs.ts, which knows imports and files. */
export interface Photographs {
  /** Lets the user pick photographs and the XMP files beside them; none when they think better of it. */
  pick(): Promise<readonly File[]>;
  /** What a drop holds, folders with all that is in them. */
  dropped(items: DataTransferItemList): Promise<readonly File[]>;
  /** Reads what they say of themselves. Null when it was cancelled. */
  read(
    files: readonly File[],
    progress: (done: number, of: number) => void,
    cancel: AbortSignal,
  ): Promise<readonly PhotoRecord[] | null>;
  /** Which of these files a record (`PhotoRecord.file`) is of. */
  pictureOf(files: readonly File[], file: string): File | null;
  /** The log as a table (CSV). */
  saveLog(entries: readonly LogEntry[]): Promise<void>;
}
