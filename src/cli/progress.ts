/** Hears how far the command is: how many of how many are done of what takes time. */
export type Told = (done: number, of: number, what: string) => void;

/** Of how many on a person at the terminal hears how far it is: fewer are done in a moment. */
const many = 20;

interface Stream {
  write(text: string): unknown;
  readonly isTTY?: boolean;
}

/** One line at the terminal that says how far it is, written over by the next and wiped away at the end; nothing where nobody looks. */
export function progressOn(err: Stream): { readonly told: Told; readonly wipe: () => void } {
  let shown = '';
  return {
    told: (done, of, what) => {
      if (err.isTTY !== true || of < many) return;
      const words = `${done} of ${of} ${what}`;
      err.write(`\r${words}${words.length < shown.length ? '\x1b[K' : ''}`);
      shown = words;
    },
    wipe: () => {
      if (shown !== '') err.write('\r\x1b[K');
      shown = '';
    },
  };
}
