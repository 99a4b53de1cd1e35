/** Whatever an answer hangs on. Answers are found by the first part: mostly a feature of a survey. */
export type Key = readonly [object, ...unknown[]];

interface Entry<R> {
  readonly key: Key;
  readonly answer: R;
}

/**
 * Remembers answers: surveys share what an edit left alone, so while one thing is dragged what follows from everything else
 * is found here.
 *
 * Key: stated with each question. Its parts are compared by identity, lists entry by entry.
 * Bound: the `each` newest answers about each first part.
 * Life: as long as anybody holds the first part, or until `keepOnly` names a list without it. History holds the features of
 * past surveys: whoever keeps large answers about features says which survey is the present one.
 */
export class Memo<R> {
  readonly #each: number;
  #known = new WeakMap<object, readonly Entry<R>[]>();
  /** Whether first parts have come in since `keepOnly`. */
  #fresh = false;

  constructor({ each = 1 }: { readonly each?: number } = {}) {
    this.#each = each;
  }

  /** The answer kept under a key, else what `compute` makes, kept from now on. */
  get(key: Key, compute: () => R): R {
    const [first] = key;
    const entries = this.#known.get(first) ?? [];
    const known = entries.find((entry) => sameParts(entry.key, key));
    if (known) return known.answer;
    const entry = { key, answer: compute() };
    if (entries.length === 0) this.#fresh = true;
    this.#known.set(first, [entry, ...entries.slice(0, this.#each - 1)]);
    return entry.answer;
  }

  /** Forgets everything that is not about one of these first parts. */
  keepOnly(firsts: Iterable<object>): void {
    if (!this.#fresh) return;
    this.#fresh = false;
    const kept = new WeakMap<object, readonly Entry<R>[]>();
    for (const first of firsts) {
      const entries = this.#known.get(first);
      if (entries) kept.set(first, entries);
    }
    this.#known = kept;
  }
}

/**
 * The same function, answering the same object while it is asked the same; keys as in `Memo`. Bound: its last answer. Life:
 * the function's own.
 */
export function lastAnswer<A extends readonly unknown[], R>(make: (...args: A) => R): (...args: A) => R {
  let last: { readonly args: A; readonly answer: R } | null = null;
  return (...args) => {
    if (!last || !sameParts(args, last.args)) last = { args, answer: make(...args) };
    return last.answer;
  };
}

/** Plain loops: asked thousands of times while something is dragged. */
function sameParts(a: readonly unknown[], b: readonly unknown[]): boolean {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (!samePart(a[i], b[i])) return false;
  return true;
}

function samePart(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (!Array.isArray(a) || !Array.isArray(b) || a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (!Object.is(a[i], b[i])) return false;
  return true;
}
