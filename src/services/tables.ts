import { saveFile } from '../storage/files';
import type { ListEntries, ListName } from '../survey/kit-lists';
import { pickOne, tableFile, textOfTable } from './table-file';
import type { TableReading, Tables } from '../ports/tables';

const kitFile = tableFile('Table (CSV)');

/** Tables of the kit and the subjects: the part of the composition root that knows imports, exports and files. */
export class KitTables implements Tables {
  pick(): Promise<File | null> {
    return pickOne(kitFile);
  }

  async read<L extends ListName>(
    list: L,
    file: File,
    existing: readonly ListEntries[L][],
  ): Promise<TableReading<L>> {
    // The reader of tables comes only when somebody has one.
    const { readTable } = await import('../imports/tables/read-table');
    return readTable(list, await textOfTable(file), existing);
  }

  async save<L extends ListName>(list: L, entries: readonly ListEntries[L][]): Promise<void> {
    const { tableText } = await import('../exports/tables');
    await saveFile(tableText(list, entries), `${list}.csv`, kitFile, null);
  }
}
