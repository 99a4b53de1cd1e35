import type { CalendarEntry } from '../exports/calendar';

/** What of the plan is taken along as files: built by calendar-files.ts, which knows exports and files. */
export interface CalendarFiles {
  /** As a calendar file: by the browser's file access, or as a download. */
  save(entries: readonly CalendarEntry[]): Promise<void>;
}
