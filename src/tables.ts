import { decodeTable } from './imports/tables/decode';
import { pickFile, saveFile, type FileKind } from './storage/files';
import type { ListEntries, ListName } from './survey/kit-lists';
import type { TableReading, Tables } from './ui/app-context';

const tableFile: FileKind = {
  mediaType: 'text/csv',
  extensions: ['.csv', '.tsv', '.txt'],
  description: 'Table (CSV)',
};

/** Tables of the kit and the subjects: the part of the composition root that knows imports, exports and files. */
export class KitTables implements Tables {
  async pick(): Promise<File | null> {
    return (await pickFile(tableFile))?.file ?? null;
  }

  async read<L extends ListName>(
    list: L,
    file: File,
    existing: readonly ListEntries[L][],
  ): Promise<TableReading<L>> {
    // The reader of tables comes only when somebody has one.
    const { readTable } = await import('./imports/tables/read-table');
    return readTable(list, decodeTable(new Uint8Array(await file.arrayBuffer())), existing);
  }

  async save<L extends ListName>(list: L, entries: readonly ListEntries[L][]): Promise<void> {
    const { tableText } = await import('./exports/tables');
    await saveFile(tableText(list, entries), `${list}.csv`, tableFile, null);
  }
}
