import type { CalendarEntry } from '../exports/calendar';
import { saveFile, type FileKind } from '../storage/files';
import type { CalendarFiles } from '../ports/calendar-files';

const calendarFile: FileKind = {
  mediaType: 'text/calendar',
  extensions: ['.ics'],
  description: 'Calendar (iCalendar)',
};

/** What of the plan is taken along as files: the part of the composition root that knows exports and files. */
export class SavedCalendars implements CalendarFiles {
  readonly #now: () => number;

  constructor(now: () => number) {
    this.#now = now;
  }

  async save(entries: readonly CalendarEntry[]): Promise<void> {
    const { calendarText } = await import('../exports/calendar');
    await saveFile(calendarText(entries, this.#now()), 'plan.ics', calendarFile, null);
  }
}
