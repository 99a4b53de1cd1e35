/**
 * What `JSON.stringify(members, null, 1)` gives, piece by piece: a member that is a generator becomes a list that is
 * never in memory as a whole. Hundreds of spots and paths are more text than a string can hold.
 */
export function* jsonPieces(members: Readonly<Record<string, unknown>>): Generator<string> {
  let before = '{';
  for (const [name, value] of Object.entries(members)) {
    yield `${before}\n ${JSON.stringify(name)}: `;
    before = ',';
    if (isGenerator(value)) yield* listPieces(value);
    else yield indented(value, 1);
  }
  yield before === '{' ? '{}' : '\n}';
}

function* listPieces(items: Iterable<unknown>): Generator<string> {
  let before = '[';
  for (const item of items) {
    yield `${before}\n  ${indented(item, 2)}`;
    before = ',';
  }
  yield before === '[' ? '[]' : '\n ]';
}

const isGenerator = (value: unknown): value is Generator =>
  typeof value === 'object' && value !== null && 'next' in value && Symbol.iterator in value;

/** Line ends inside JSON are always between its values. */
const indented = (value: unknown, depth: number): string =>
  JSON.stringify(value, null, 1).replaceAll('\n', `\n${' '.repeat(depth)}`);
