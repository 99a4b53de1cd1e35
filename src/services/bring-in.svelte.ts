import { sniff, sniffed, unknownFile } from '../imports/bring-in/sniff';
import type { ImportNeeds } from './import-in-progress.svelte';
import { Turns } from '../state/turns';
import { droppedFiles } from '../storage/dropped-files';
import { pickFiles, type FileKind } from '../storage/files';
import { messageOf } from '../keeping/survey-files';
import type { Imports, ImportUnderWay } from '../ports/imports';

const importFiles: FileKind = {
  mediaType: '*/*',
  extensions: ['.osm', '.xml', '.json', '.geojson', '.csv', '.gpx', '.kml', '.txt'],
  description: 'Maps, tables and flights',
};

/** The part of the composition root that knows the imports: which files are for them, and their worker. */
export class ImportDesk implements Imports {
  underWay = $state.raw<ImportUnderWay | null>(null);
  readonly #needs: ImportNeeds;
  readonly #turns = new Turns();

  constructor(needs: ImportNeeds) {
    this.#needs = needs;
  }

  async pick(): Promise<void> {
    const { view } = this.#needs;
    try {
      const files = await pickFiles([importFiles]);
      if (files.length > 0) await this.#start(files, this.#turns.begin());
    } catch (error) {
      view.notice = `The files could not be brought in: ${messageOf(error)}`;
    }
  }

  async drop(files: readonly File[]): Promise<void> {
    const [first] = files;
    if (!first) return;
    const { files: surveys, view } = this.#needs;
    const isLast = this.#turns.begin();
    try {
      const head = await first.slice(0, sniffed).text();
      const is = sniff(first.name, head, await first.slice(-sniffed).text());
      // Other files were dropped since: those are meant.
      if (!isLast()) return;
      if (is === 'survey' || is === 'archive') return await surveys.openFile(first);
      if (is !== 'unknown') return await this.#start(files, isLast);
      view.notice = `${first.name}: ${unknownFile}`;
    } catch (error) {
      if (isLast()) view.notice = `The file could not be read: ${messageOf(error)}`;
    }
  }

  async dropFolders(items: DataTransferItemList): Promise<void> {
    const files = await droppedFiles(items);
    const known = files.filter(({ name }) =>
      importFiles.extensions.some((extension) => name.toLowerCase().endsWith(extension)),
    );
    if (known.length === 0)
      this.#needs.view.notice = 'There is nothing in this folder that can be brought in.';
    else await this.drop(known);
  }

  async #start(files: readonly File[], isLast: () => boolean): Promise<void> {
    const { document, view } = this.#needs;
    if (document.readOnly) {
      view.notice = 'This survey can be looked at, but nothing can be brought into it here.';
      return;
    }
    this.underWay?.close();
    // The rest comes only when somebody has something to bring in.
    const { ImportInProgress } = await import('./import-in-progress.svelte');
    if (!isLast()) return;
    const started: ImportUnderWay = new ImportInProgress(files, this.#needs, () => {
      if (this.underWay === started) this.underWay = null;
    });
    this.underWay = started;
  }
}
