import type { LeftOut } from './types';

/** Counts what stays out, by what it is and why. */
export class Tally {
  readonly #counts = new Map<string, { what: string; reason: string; count: number }>();

  add(what: string, reason: string, count = 1): void {
    const key = `${what}\n${reason}`;
    const entry = this.#counts.get(key);
    if (entry) entry.count += count;
    else this.#counts.set(key, { what, reason, count });
  }

  addAll(left: readonly LeftOut[]): void {
    for (const { what, reason, count } of left) this.add(what, reason, count);
  }

  /** The most frequent first. */
  get list(): readonly LeftOut[] {
    return [...this.#counts.values()].sort((a, b) => b.count - a.count);
  }
}
