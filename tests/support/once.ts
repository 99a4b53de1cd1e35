/** Worked out when it is first asked for, then kept: what several tests of a file look at. */
export function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => (made ??= { value: make() }).value;
}
