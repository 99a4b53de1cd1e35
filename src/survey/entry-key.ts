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

/** A key made of a name that is not taken, so that people who read the file know what it is for. */
export function freshKey(name: string, taken: ReadonlySet<string>): string {
  const made = keyOfName(name);
  let free = made;
  for (let n = 2; taken.has(free); n++) free = `${made}-${n}`;
  return free;
}
