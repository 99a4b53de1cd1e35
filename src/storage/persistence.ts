/** Whether the browser may clear what is kept when space runs short; unknown where it does not say. */
export type Persistence = 'kept' | 'may-be-cleared' | 'unknown';

/** What this page uses and may use, in bytes; null where the browser does not say. */
export interface Room {
  readonly used: number;
  readonly quota: number;
}

/** Missing on plain http in a local network. */
const manager = (): StorageManager | undefined =>
  typeof navigator === 'undefined' ? undefined : (navigator as { storage?: StorageManager }).storage;

export async function persistence(): Promise<Persistence> {
  try {
    const persisted = await manager()?.persisted();
    if (persisted === undefined) return 'unknown';
    return persisted ? 'kept' : 'may-be-cleared';
  } catch {
    return 'unknown';
  }
}

/** Asks the browser not to clear what is kept. Some ask the user, others decide by how much the page is used. */
export async function askForPersistence(): Promise<Persistence> {
  try {
    if ((await persistence()) === 'may-be-cleared') await manager()?.persist();
  } catch {
    // No answer is an answer too: it stays as it was.
  }
  return persistence();
}

const askedKey = 'sunside-asked-to-keep';
/** ms: some browsers ask the user each time, and nobody wants the same question every day. */
const askAgainAfter = 30 * 24 * 3_600_000;

/** Asks unless it was asked not long ago; `now` in ms since 1970. */
export async function askForPersistenceAtTimes(now: number): Promise<void> {
  try {
    const asked = Number(localStorage.getItem(askedKey) ?? -Infinity);
    if (now - asked < askAgainAfter) return;
    localStorage.setItem(askedKey, String(now));
  } catch {
    return;
  }
  await askForPersistence();
}

export async function room(): Promise<Room | null> {
  try {
    const { usage, quota } = (await manager()?.estimate()) ?? {};
    return usage === undefined || quota === undefined ? null : { used: usage, quota };
  } catch {
    return null;
  }
}
