import type { CalendarEntry } from '../exports/calendar';
import { messageOf } from '../keeping/survey-files';
import { saveFile, type FileKind } from '../storage/files';
import type { Downloads } from '../ports/downloads';

const calendarFile: FileKind = {
  mediaType: 'text/calendar',
  extensions: ['.ics'],
  description: 'Calendar (iCalendar)',
};

const pictureFile: FileKind = {
  mediaType: 'image/png',
  extensions: ['.png'],
  description: 'Picture (PNG)',
};

/** What is taken along as files: the part of the composition root that knows exports and files. */
export class FileDownloads implements Downloads {
  readonly #now: () => number;

  constructor(now: () => number) {
    this.#now = now;
  }

  async save(entries: readonly CalendarEntry[]): Promise<void> {
    const { calendarText } = await import('../exports/calendar');
    await saveFile(calendarText(entries, this.#now()), 'plan.ics', calendarFile, null);
  }

  async savePicture(picture: Promise<Blob>, name: string): Promise<string | null> {
    try {
      await saveFile(picture, name, pictureFile, null);
      return null;
    } catch (error) {
      return `The picture could not be saved: ${messageOf(error)}.`;
    }
  }
}
