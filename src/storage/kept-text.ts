/** A text that this device keeps under a name. Where storage is refused nothing is kept, and that is no error. */
export interface KeptText {
  read(): string | null;
  /** Whether it is kept now. */
  write(text: string): boolean;
}

export const keptText = (key: string): KeptText => ({
  read() {
    try {
      return localStorage.getItem(key);
    } catch {
      return null;
    }
  },
  write(text) {
    try {
      localStorage.setItem(key, text);
      return true;
    } catch {
      return false;
    }
  },
});
