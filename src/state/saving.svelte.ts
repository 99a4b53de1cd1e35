import type { KeptNote, StoredSurvey } from '../storage/records';
import { atOnce } from '../survey/at-once';
import { pagePauses, sliced } from './in-slices';
import type { Saveable, SavingNeeds } from './saving-needs';

/**
 * ms after a change until it is written. A busy machine adds to it (half a second at worst, while the map is drawn in
 * software): the sum stays below the second that may be lost (`npm run soak`).
 */
const writeAfter = 250;
/** ms until a refused write is tried again: room may have been made elsewhere. */
const retryAfter = 10_000;

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
  /** Why the browser keeps nothing, null while it does. */
  refused = $state.raw<string | null>(null);

  readonly #needs: SavingNeeds;
  #revision = 0;
  /** Changed since the last write began, or that write failed. */
  #unsaved = $state.raw(false);
  #timer: ReturnType<typeof setTimeout> | null = null;
  /** The timer waits for a refused write's next attempt. */
  #retrying = false;
  #writing: Promise<void> = Promise.resolve();
  /** A write has begun and not been answered. */
  #underWay = false;
  /** Something was put down for the next page. */
  #left = false;
  /** Text of the state at `#revision`, made when asked for: what this tab's and another tab's states began as. */
  #began: (() => string) | null = null;
  /** Counts the surveys opened: the answer to a write of an earlier one says nothing about this one. */
  #opening = 0;

  constructor(needs: SavingNeeds) {
    this.#needs = needs;
  }

  /** The revision that this tab knows, 0 for none. */
  get revision(): number {
    return this.#revision;
  }
  /** The state that this tab knows to be kept, as text; null where none is. */
  get began(): string | null {
    return this.#began?.() ?? null;
  }
  /** The open survey exists nowhere but in this page, and will not be kept without the user's doing. */
  get atRisk(): boolean {
    return this.#unsaved && (this.theirs !== null || this.refused !== null);
  }

  /** Another survey is open now; `revision` is the one it was read at, 0 when it is not kept yet. */
  opened(revision: number): void {
    this.#cancel();
    this.#opening++;
    this.#revision = revision;
    this.#began = revision > 0 ? madeOf(this.#needs.open()) : null;
    this.#unsaved = false;
    this.#underWay = false;
    this.#forget();
    this.theirs = null;
    this.refused = null;
    this.#say(revision > 0 ? 'Kept on this device' : 'Not changed yet');
  }

  /** The survey has changed. */
  changed(): void {
    this.#unsaved = true;
    if (this.theirs) return;
    if (this.refused === null) this.#say('Saving …');
    if (this.#retrying) this.#cancel();
    this.#timer ??= setTimeout(() => void this.flush(), writeAfter);
  }

  /**
   * The page is about to go, or hidden and may never be seen again: it may not live to see a write answered. In a
   * hidden page a lost race can still be decided by the user.
   */
  pageGoes(hiddenOnly: boolean): Promise<void> {
    if ((this.#unsaved || this.#underWay) && !(hiddenOnly && this.theirs)) {
      const { text, ...about } = this.#about();
      this.#needs.leave({ ...about, text: atOnce(text()) }, this.#revision);
      this.#left = true;
    }
    return this.flush();
  }

  /** What another tab has written is part of the open survey now: the next write goes over it. */
  tookIn(theirs: StoredSurvey): void {
    if (this.theirs !== theirs) return;
    this.theirs = null;
    this.#revision = theirs.revision;
    this.#began = () => theirs.text;
    this.changed();
  }

  /** Writes what has not been written yet. */
  flush(): Promise<void> {
    if (!this.#unsaved || this.theirs) return this.#writing;
    this.#cancel();
    // A write that throws is a programmer's error; it must not stop the ones after it.
    this.#writing = this.#writing.catch(() => undefined).then(() => this.#writeNow());
    return this.#writing;
  }

  /** The survey is safe in a file: nothing is at risk until it changes again. */
  savedToFile(): void {
    if (this.refused === null) return;
    this.#cancel();
    this.#unsaved = false;
    this.#say('Saved to a file, not kept on this device', true);
  }

  /** Another tab says what it has written. */
  async heard({ id, revision }: KeptNote): Promise<void> {
    if (id !== this.#needs.open().id || revision === null || revision <= this.#revision) return;
    const opening = this.#opening;
    // A write of this tab's own may be under way: its answer tells first who has won.
    await this.#writing;
    const theirs = await this.#needs.read(id);
    if (opening !== this.#opening || this.theirs || !theirs || theirs.revision <= this.#revision) return;
    if (this.#unsaved) this.#lost(theirs);
    else if (await this.#needs.follow(theirs)) this.#say('Changed in another tab, and shown as it is there');
  }

  async #writeNow(): Promise<void> {
    if (!this.#unsaved || this.theirs) return;
    const opening = this.#opening;
    const known = this.#revision;
    const { text: steps, ...about } = this.#about();
    this.#unsaved = false;
    this.#underWay = true;
    const text = await sliced(steps(), pagePauses);
    const written = await this.#needs.write({ ...about, text }, known);
    if (opening !== this.#opening) return;
    this.#underWay = false;
    // Another page may have kept what this one had put down.
    const isOurs = !written.ok && written.why === 'conflict' && written.theirs.text === text;
    if (written.ok || isOurs) {
      this.#revision = written.ok ? written.revision : written.theirs.revision;
      this.#began = madeOf({ text: steps });
      this.refused = null;
      if (this.#unsaved) return;
      this.#forget();
      this.#say('Kept on this device');
      return;
    }
    this.#unsaved = true;
    this.#cancel();
    if (written.why === 'conflict') this.#lost(written.theirs);
    else {
      this.refused = written.reason;
      this.#say('Not kept on this device', true);
      this.#retrying = true;
      this.#timer = setTimeout(() => void this.flush(), retryAfter);
    }
  }

  #about(): Saveable & { readonly changed: number } {
    return { ...this.#needs.open(), changed: this.#needs.now() };
  }

  #forget(): void {
    if (this.#left) this.#needs.forget();
    this.#left = false;
  }

  #lost(theirs: StoredSurvey): void {
    this.#cancel();
    this.refused = null;
    this.theirs = theirs;
    this.#say('Changed in another tab', true);
  }

  #say(text: string, trouble = false): void {
    if (text !== this.status.text) this.status = { text, trouble };
  }

  #cancel(): void {
    if (this.#timer !== null) clearTimeout(this.#timer);
    this.#timer = null;
    this.#retrying = false;
  }
}

/** Makes the text of a state whenever it is asked for. */
const madeOf =
  ({ text }: Pick<Saveable, 'text'>): (() => string) =>
  () =>
    atOnce(text());
