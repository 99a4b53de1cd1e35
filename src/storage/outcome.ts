import type { Outcome } from './records';

/** Runs a request of the database; what the browser throws becomes a reason in plain words. */
export async function attempt<T>(run: () => Promise<T>): Promise<Outcome<T>> {
  try {
    return { ok: true, value: await run() };
  } catch (error) {
    return { ok: false, reason: reasonOf(error) };
  }
}

/** The names are those of the IndexedDB standard (W3C Indexed Database API 3.0, section 3.2). */
const words: Readonly<Record<string, string>> = {
  QuotaExceededError: 'there is no room left for it',
  SecurityError: 'the browser allows this page no storage',
  InvalidStateError: 'the browser allows no storage in this window',
  VersionError: 'a newer Sunside has been used here; reload the page',
};

export function reasonOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  return words[error.name] ?? (error.message || error.name);
}
