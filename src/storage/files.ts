import { fileOpen, fileSave } from 'browser-fs-access';

export interface OpenedFile {
  readonly name: string;
  readonly text: string;
  readonly handle: FileSystemFileHandle | null;
}

export interface FileKind {
  readonly mediaType: string;
  readonly extensions: readonly `.${string}`[];
  readonly description: string;
}

const cancelled = (error: unknown) => error instanceof DOMException && error.name === 'AbortError';

/** Lets the user pick a file; null when they think better of it. */
export async function pickFile(kind: FileKind): Promise<OpenedFile | null> {
  try {
    const file = await fileOpen({
      description: kind.description,
      mimeTypes: [kind.mediaType],
      extensions: [...kind.extensions],
    });
    return { name: file.name, text: await file.text(), handle: file.handle ?? null };
  } catch (error) {
    if (cancelled(error)) return null;
    throw error;
  }
}

/**
 * Saves text to a file: again to `handle` when there is one, else where the user says, else as a download.
 * Null when the user thinks better of it.
 */
export async function saveFile(
  text: string,
  name: string,
  kind: FileKind,
  handle: FileSystemFileHandle | null,
): Promise<{ readonly handle: FileSystemFileHandle | null } | null> {
  const blob = new Blob([text], { type: kind.mediaType });
  const options = { fileName: name, description: kind.description, extensions: [...kind.extensions] };
  try {
    return { handle: await fileSave(blob, options, handle) };
  } catch (error) {
    if (cancelled(error)) return null;
    throw error;
  }
}
