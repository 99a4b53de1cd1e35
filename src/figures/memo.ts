/** Whatever an answer hangs on. The first part is an object: answers are found by it. */
type Key = readonly [object, ...unknown[]];

interface Entry<R> {
  readonly key: Key;
  readonly answer: R;
}

/** What the two kinds of map have in common. */
interface ByFirst<R> {
  get(first: object): Entry<R>[] | undefined;
  set(first: object, entries: Entry<R>[]): unknown;
  delete(first: object): boolean;
}

/**
 * `most`: that many answers are kept, and those asked for longest ago go first. For what a survey holds: its history holds
 * the same objects, and answers about past surveys must not stay.
 *
 * `'with-first'`: the last answer about each first part, for as long as anybody holds that part. Only for what is itself an
 * answer kept elsewhere, never for a part of a survey.
 */
type Life = { readonly most: number } | 'with-first';

/**
 * Remembers answers. The key is stated with each question: its parts are compared by identity, lists entry by entry, so
 * surveys that share what an edit left alone find here what follows from it. Bound and life are stated by the owner.
 */
export class Memo<R> {
  readonly #most: number;
  readonly #byFirst: ByFirst<R>;
  /** All entries, the one asked for last at the end; null where they live and die with their first part. */
  readonly #order: Set<Entry<R>> | null;

  constructor(life: Life) {
    const bounded = life !== 'with-first';
    this.#most = bounded ? life.most : Infinity;
    this.#order = bounded ? new Set() : null;
    this.#byFirst = bounded ? new Map() : new WeakMap();
  }

  /** The answer kept under a key, else what `compute` makes, kept from now on. */
  get(key: Key, compute: () => R): R {
    const known = this.#byFirst.get(key[0])?.find((entry) => sameKey(entry.key, key));
    if (known) {
      if (this.#order?.delete(known)) this.#order.add(known);
      return known.answer;
    }
    const entry = { key, answer: compute() };
    if (this.#order) {
      this.#order.add(entry);
      this.#byFirst.set(key[0], [...(this.#byFirst.get(key[0]) ?? []), entry]);
      this.keepLast(this.#most);
    } else this.#byFirst.set(key[0], [entry]);
    return entry.answer;
  }

  /** Forgets all but the `count` answers asked for last: whoever has asked for a whole list knows how many are in use. */
  keepLast(count: number): void {
    if (!this.#order) return;
    for (const entry of this.#order) {
      if (this.#order.size <= count) return;
      this.#order.delete(entry);
      const rest = (this.#byFirst.get(entry.key[0]) ?? []).filter((e) => e !== entry);
      if (rest.length > 0) this.#byFirst.set(entry.key[0], rest);
      else this.#byFirst.delete(entry.key[0]);
    }
  }
}

const sameKey = (a: Key, b: Key): boolean => a.length === b.length && a.every((part, i) => same(part, b[i]));

const same = (a: unknown, b: unknown): boolean =>
  Object.is(a, b) ||
  (Array.isArray(a) && Array.isArray(b) && a.length === b.length && a.every((entry, i) => entry === b[i]));
