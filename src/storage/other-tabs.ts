import type { KeptNote } from './records';

/**
 * Tells the other tabs of this browser what has been written, where the browser can (BroadcastChannel). Where it
 * cannot, a tab learns of it at its next write, which compares revisions, or when it is looked at again.
 */
export class OtherTabs {
  readonly #channel: BroadcastChannel | null;

  constructor(name = 'sunside-kept') {
    this.#channel = openChannel(name);
  }

  readonly tell = (note: KeptNote): void => {
    this.#channel?.postMessage(note);
  };

  listen(heard: (note: KeptNote) => void): void {
    this.#channel?.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
      const note = noteOf(data);
      if (note) heard(note);
    });
  }

  close(): void {
    this.#channel?.close();
  }
}

function openChannel(name: string): BroadcastChannel | null {
  try {
    return typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(name);
  } catch {
    // Refused where storage is refused: a tab of that kind keeps nothing anyway.
    return null;
  }
}

/** A tab of another version may say something else. */
function noteOf(data: unknown): KeptNote | null {
  if (typeof data !== 'object' || data === null || !('id' in data) || !('revision' in data)) return null;
  const { id, revision } = data;
  return typeof id === 'string' && (revision === null || typeof revision === 'number')
    ? { id, revision }
    : null;
}
