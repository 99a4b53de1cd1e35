import { decodeTable } from '../imports/tables/decode';
import { pickFile, type FileKind } from '../storage/files';

/** A table, called in the file dialog what `description` says. */
export const tableFile = (description: string): FileKind => ({
  mediaType: 'text/csv',
  extensions: ['.csv', '.tsv', '.txt'],
  description,
});

/** Lets the user pick a file; null when they think better of it. */
export const pickOne = async (kind: FileKind): Promise<File | null> => (await pickFile(kind))?.file ?? null;

/** What a table says, whatever its encoding. */
export const textOfTable = async (file: File): Promise<string> =>
  decodeTable(new Uint8Array(await file.arrayBuffer()));
