/** What a browser may withhold from a page. */
export type Missing = 'offline' | 'keeping' | 'position' | 'clipboard';

/** A newer program than the one on this page. */
export interface NewVersion {
  /** Stored and waiting; running in other tabs already; or guessed, since a part of this one is not there any more. */
  readonly why: 'waiting' | 'started-elsewhere' | 'part-missing';
  /** Puts what is open into safety and starts it, which loads the page anew. */
  take(): Promise<void>;
  /** Not now: it waits until the next start. */
  later(): void;
}

/** The program as it lies on this device: built by program.svelte.ts, which knows the service worker. */
export interface Program {
  /** Whether it starts without a network. */
  readonly offline: 'ready' | 'soon' | 'never';
  readonly missing: readonly Missing[];
  readonly newVersion: NewVersion | null;
}
