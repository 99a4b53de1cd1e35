import type { Tag } from '../exports/sheet/markup';
import type { CalendarEntry } from '../exports/calendar';
import { messageOf } from '../keeping/survey-files';
import { saveFile, type FileKind } from '../storage/files';
import { fileStem } from '../units/file-stem';
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

const pageFile: FileKind = {
  mediaType: 'text/html',
  extensions: ['.html'],
  description: 'Page (HTML)',
};

/** What is taken along as files: the part of the composition root that knows exports and files. */
export class FileDownloads implements Downloads {
  readonly #now: () => number;

  constructor(now: () => number) {
    this.#now = now;
  }

  async save(entries: readonly CalendarEntry[], name: string): Promise<void> {
    const { calendarText } = await import('../exports/calendar');
    await saveFile(calendarText(entries, this.#now()), `${fileStem(name, 'plan')}.ics`, calendarFile, null);
  }

  async savePicture(picture: Promise<Blob>, name: string): Promise<string | null> {
    try {
      await saveFile(picture, name, pictureFile, null);
      return null;
    } catch (error) {
      return `The picture could not be saved: ${messageOf(error)}.`;
    }
  }

  async saveSheet(page: Tag, title: string, name: string): Promise<string | null> {
    try {
      const [{ sheetDocument }, { default: style }] = await Promise.all([
        import('../exports/sheet/sheet-document'),
        import('../../styles/field-sheet.css?raw'),
      ]);
      await saveFile(sheetDocument(title, page, style), `${fileStem(name, 'sheet')}.html`, pageFile, null);
      return null;
    } catch (error) {
      return `The sheet could not be saved: ${messageOf(error)}.`;
    }
  }
}
