interface Named {
  readonly key: string;
  readonly name: string | null;
}

/**
 * The key of a row: its own; else that of the entry of the same name, so that a table without keys doubles nothing
 * when it comes a second time; else one made of the name. Null without any name.
 */
export function keyFor(key: unknown, name: unknown, existing: readonly Named[]): string | null {
  if (typeof key === 'string') return key;
  if (typeof name !== 'string') return null;
  const same = existing.find((entry) => entry.name === name);
  if (same) return same.key;
  const made = keyOfName(name);
  const taken = new Set(existing.map((entry) => entry.key));
  let free = made;
  for (let n = 2; taken.has(free); n++) free = `${made}-${n}`;
  return free;
}

/** "100–400 mm f/5.6" as "100-400-mm-f-5-6"; a name without Latin letters and digits is its own key. */
function keyOfName(name: string): string {
  const plain = name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  return plain === '' ? name : plain;
}
