import type { Tag } from '../exports/sheet/markup';
import type { CalendarEntry } from '../exports/calendar';

/** What is taken along as files: built by services/downloads.ts, which knows exports and files. */
export interface Downloads {
  /** As a calendar file, named by some words: by the browser's file access, or as a download. */
  save(entries: readonly CalendarEntry[], name: string): Promise<void>;
  /** As a PNG file, in the same way. Null, or why it could not be saved. */
  savePicture(picture: Promise<Blob>, name: string): Promise<string | null>;
  /** A field sheet as a page of its own (HTML), in the same way. Null, or why it could not be saved. */
  saveSheet(page: Tag, title: string, name: string): Promise<string | null>;
}
