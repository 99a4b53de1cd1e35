type Access = typeof import('browser-fs-access');

let access: Promise<Access> | null = null;

/** What asks for files and saves them comes right after the page, before anybody can click; had it failed, it is asked for again. */
function fileAccess(): Promise<Access> {
  access ??= import('browser-fs-access').catch((error: unknown) => {
    access = null;
    throw error;
  });
  return access;
}
void fileAccess().catch(() => undefined);

export interface PickedFile {
  readonly file: File;
  readonly handle: FileSystemFileHandle | null;
}

export interface FileKind {
  readonly mediaType: string;
  readonly extensions: readonly `.${string}`[];
  readonly description: string;
}

/** Lets the user pick a file; null when they think better of it. */
export async function pickFile(kind: FileKind): Promise<PickedFile | null> {
  const { fileOpen } = await fileAccess();
  const file = await unlessCancelled(fileOpen(options([kind])));
  return file && { file, handle: file.handle ?? null };
}

/** Lets the user pick any number of files of several kinds; none when they think better of it. */
export async function pickFiles(kinds: readonly FileKind[]): Promise<readonly File[]> {
  const { fileOpen } = await fileAccess();
  return (await unlessCancelled(fileOpen({ ...options(kinds), multiple: true }))) ?? [];
}

/**
 * Saves to a file: again to `handle` when there is one, else where the user says, else as a download.
 * Null when the user thinks better of it. The content may still be in the making: a browser lets a page ask where
 * to save only shortly after a click.
 */
export async function saveFile(
  content: string | Promise<Blob>,
  name: string,
  kind: FileKind,
  handle: FileSystemFileHandle | null,
): Promise<{ readonly handle: FileSystemFileHandle | null } | null> {
  const { fileSave } = await fileAccess();
  const blob = typeof content === 'string' ? new Blob([content], { type: kind.mediaType }) : content;
  const where = { fileName: name, description: kind.description, extensions: [...kind.extensions] };
  return unlessCancelled(fileSave(blob, where, handle).then((saved) => ({ handle: saved })));
}

const options = (kinds: readonly FileKind[]) => ({
  description: kinds.map((kind) => kind.description).join(', '),
  mimeTypes: kinds.map((kind) => kind.mediaType),
  extensions: kinds.flatMap((kind) => kind.extensions),
});

async function unlessCancelled<T>(asked: Promise<T>): Promise<T | null> {
  try {
    return await asked;
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return null;
    throw error;
  }
}
