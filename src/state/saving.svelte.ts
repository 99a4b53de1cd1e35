import type { StoredSurvey, Written } from '../storage/autosave';

/** What saving needs to know of the open survey. */
export interface Saveable {
  readonly id: string;
  readonly name: string;
  readonly text: () => string;
}

type Write = (survey: Omit<StoredSurvey, 'revision'>, knownRevision: number) => Promise<Written>;

/** ms after a change until it is written: the most that a dying tab loses. */
const writeAfter = 400;

/**
 * Writes the open survey to the device soon after each change, one write at a time, and says how that goes.
 * A lost race against another tab stops the writing until the user has decided.
 */
export class Saving {
  status = $state.raw<{ readonly text: string; readonly trouble: boolean }>({
    text: 'Not changed yet',
    trouble: false,
  });
  /** What another tab has written, when it was first. */
  theirs = $state.raw<StoredSurvey | null>(null);

  readonly #write: Write;
  readonly #open: () => Saveable;
  readonly #now: () => number;
  #revision = 0;
  #timer: ReturnType<typeof setTimeout> | null = null;
  #writing: Promise<void> = Promise.resolve();

  constructor(write: Write, open: () => Saveable, now: () => number) {
    this.#write = write;
    this.#open = open;
    this.#now = now;
  }

  /** Another survey is open now; `revision` is the one it was read at, 0 when it is not kept yet. */
  opened(revision: number): void {
    this.#cancel();
    this.#revision = revision;
    this.theirs = null;
    this.status = { text: revision > 0 ? 'Kept on this device' : 'Not changed yet', trouble: false };
  }

  /** The survey has changed. */
  changed(): void {
    if (this.theirs) return;
    this.status = { text: 'Saving …', trouble: false };
    this.#timer ??= setTimeout(() => void this.flush(), writeAfter);
  }

  /** Writes what has not been written yet: also when the page is about to go. */
  flush(): Promise<void> {
    if (this.#timer === null) return this.#writing;
    this.#cancel();
    this.#writing = this.#writing.then(() => this.#writeNow());
    return this.#writing;
  }

  async #writeNow(): Promise<void> {
    const { id, name, text } = this.#open();
    const written = await this.#write({ id, name, changed: this.#now(), text: text() }, this.#revision);
    if (written.ok) {
      this.#revision = written.revision;
      if (this.#timer === null) this.status = { text: 'Kept on this device', trouble: false };
    } else if (written.why === 'conflict') {
      this.#cancel();
      this.theirs = written.theirs;
      this.status = { text: 'Changed in another tab', trouble: true };
    } else {
      this.status = {
        text: `Not kept on this device (${written.reason}). Save it to a file.`,
        trouble: true,
      };
    }
  }

  #cancel(): void {
    if (this.#timer !== null) clearTimeout(this.#timer);
    this.#timer = null;
  }
}
