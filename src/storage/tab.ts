const key = 'sunside-open';

/** Remembers for this tab which survey is open, so that two tabs come back with a survey each. */
export function tabKeeps(id: string): void {
  try {
    sessionStorage.setItem(key, id);
  } catch {
    // Storage is refused: after a reload the survey changed last is opened instead.
  }
}

/** The survey that was open in this tab, null when that is not known. */
export function tabKept(): string | null {
  try {
    return sessionStorage.getItem(key);
  } catch {
    return null;
  }
}
