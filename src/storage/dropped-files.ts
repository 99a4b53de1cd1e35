/** What a drop holds, folders with all that is in them. */
export async function droppedFiles(items: DataTransferItemList): Promise<readonly File[]> {
  // Entries must be taken before the first wait: the list is empty afterwards.
  const entries = Array.from(items, (item) => item.webkitGetAsEntry()).filter((entry) => entry !== null);
  return (await Promise.all(entries.map(filesIn))).flat();
}

async function filesIn(entry: FileSystemEntry): Promise<readonly File[]> {
  if (entry.isFile)
    return new Promise((resolve) =>
      (entry as FileSystemFileEntry).file(
        // Two folders may hold a picture of one name: the path tells them apart. Nothing is copied.
        (file) => resolve([new File([file], entry.fullPath.slice(1), { type: file.type })]),
        () => resolve([]),
      ),
    );
  const reader = (entry as FileSystemDirectoryEntry).createReader();
  const files: File[] = [];
  for (;;) {
    // A folder is told in pieces of a hundred.
    const piece = await new Promise<readonly FileSystemEntry[]>((resolve) =>
      reader.readEntries(resolve, () => resolve([])),
    );
    if (piece.length === 0) return files;
    for (const inside of piece) files.push(...(await filesIn(inside)));
  }
}
