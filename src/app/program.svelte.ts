import { missingFor } from './abilities';
import type { Missing, NewVersion, Program } from '../ports/program';

/** The part of the browser's service worker interface that is used; a test stands in for it. */
export type Workers = Pick<ServiceWorkerContainer, 'controller' | 'register' | 'addEventListener'>;

export interface ProgramNeeds {
  /** Null where the browser has none: plain http in a local network. */
  readonly workers: Workers | null;
  readonly missing: readonly Missing[];
  /** Puts the open survey into safety, then goes on; where that fails the user decides. */
  readonly leave: (goOn: () => Promise<void>) => Promise<void>;
  /** A drag or a drawing is under way: it must not be cut off. */
  readonly busy: () => boolean;
  /** Ends what is being typed, so that it becomes an edit. */
  readonly endTyping: () => void;
  readonly reload: () => void;
  readonly now: () => number;
}

/** ms between two questions to the server whether there is a newer version. */
const askAgainAfter = 3_600_000;
/** ms after which a drag that was still under way is looked at again. */
const stillAfter = 100;

/**
 * The program as it lies on this device. The service worker stores it, so that it starts without a network; a new
 * version is stored beside it and waits until the user takes it, since starting it reloads the page.
 */
export class InstalledProgram implements Program {
  #offline = $state.raw<Program['offline']>('never');
  #newVersion = $state.raw<NewVersion['why'] | null>(null);
  readonly #needs: ProgramNeeds;
  #registration: ServiceWorkerRegistration | null = null;
  #taking = false;
  #asked = 0;

  constructor(needs: ProgramNeeds) {
    this.#needs = needs;
  }

  get missing(): readonly Missing[] {
    return this.#needs.missing;
  }
  get offline(): Program['offline'] {
    return this.#offline;
  }
  get newVersion(): NewVersion | null {
    const why = this.#newVersion;
    if (why === null) return null;
    return { why, take: () => this.#take(), later: () => (this.#newVersion = null) };
  }

  /** Registers the worker at `url`. What the browser refuses is no error: the program works without. */
  async start(url: string): Promise<void> {
    const { workers, now } = this.#needs;
    if (!workers) return;
    // The first worker of all takes over a page that is as new as itself: nothing to say.
    let first = workers.controller === null;
    workers.addEventListener('controllerchange', () => {
      if (this.#taking) this.#reload();
      else if (!first) this.#newVersion = 'started-elsewhere';
      first = false;
    });
    try {
      const registration = (await workers.register(url)) as ServiceWorkerRegistration | undefined;
      if (!registration) return;
      this.#registration = registration;
      this.#asked = now();
      this.#offline = registration.active ? 'ready' : 'soon';
      if (registration.waiting && registration.active) this.#newVersion = 'waiting';
      registration.addEventListener('updatefound', () => this.#watch(registration));
      if (registration.installing) this.#watch(registration);
    } catch {
      this.#offline = 'never';
    }
  }

  /** The page is looked at again: a tab may stay open for weeks. */
  async lookedAt(): Promise<void> {
    const now = this.#needs.now();
    if (!this.#registration || now - this.#asked < askAgainAfter) return;
    this.#asked = now;
    try {
      await this.#registration.update();
    } catch {
      // No network: what is stored goes on working.
    }
  }

  /** A part of the program that is loaded late was not there: a newer version may have taken its place. */
  partMissing(): void {
    this.#newVersion ??= 'part-missing';
  }

  #watch(registration: ServiceWorkerRegistration): void {
    const worker = registration.installing;
    worker?.addEventListener('statechange', () => {
      if (worker.state === 'installed' && registration.active) this.#newVersion = 'waiting';
      if (worker.state === 'activated') this.#offline = 'ready';
      if (worker.state === 'redundant' && !registration.active) this.#offline = 'never';
    });
  }

  async #take(): Promise<void> {
    const { endTyping, leave } = this.#needs;
    if (this.#taking || this.#needs.busy()) return;
    endTyping();
    await leave(() => {
      this.#taking = true;
      const waiting = this.#registration?.waiting;
      // The page is loaded anew once the new worker is in charge; without one it is there already.
      if (waiting) waiting.postMessage({ type: 'SKIP_WAITING' });
      else this.#reload();
      return Promise.resolve();
    });
  }

  /** What is edited between leaving and this is put down by the page when it goes (`Saving.pageGoes`). */
  #reload(): void {
    if (this.#needs.busy()) setTimeout(() => this.#reload(), stillAfter);
    else this.#needs.reload();
  }
}

/** The program in this browser. `leave` and `busy` as above. */
export function installedProgram(
  leave: ProgramNeeds['leave'],
  busy: () => boolean,
  now: () => number,
): InstalledProgram {
  const program = new InstalledProgram({
    workers: (navigator as { serviceWorker?: ServiceWorkerContainer }).serviceWorker ?? null,
    missing: missingFor(globalThis),
    leave,
    busy,
    endTyping: () => {
      if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    },
    reload: () => location.reload(),
    now,
  });
  addEventListener('vite:preloadError', () => program.partMissing());
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void program.lookedAt();
  });
  return program;
}
