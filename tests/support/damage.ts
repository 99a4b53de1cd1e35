import fc from 'fast-check';

/** A piece of the text gone, doubled, moved or replaced by something awkward. */
const damage = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  length: fc.integer({ min: 0, max: 400 }),
  instead: fc.constantFrom(
    '',
    '0',
    '-',
    'NaN',
    '1e309',
    '8.65e15',
    '+271821-04-20T00:00:00Z',
    '2026-02-30T25:61:00Z',
    '"',
    '<',
    '&',
    '&b;',
    '}',
    ']',
    ',',
    ';',
    '\n',
    '\u0000',
    '91',
    '999',
    'null',
    '{}',
    '[]',
    '__proto__',
    '<script>alert(1)</script>',
    '\uFEFF',
    '\uD800',
  ),
});
const damaged = (text: string, changes: readonly { at: number; length: number; instead: string }[]) =>
  changes.reduce((now_, { at, length, instead }) => {
    const i = Math.floor(at * now_.length);
    return now_.slice(0, i) + instead + now_.slice(i + length);
  }, text);

const awkward: readonly unknown[] = [
  null,
  0,
  -1,
  91,
  181,
  1e308,
  8.65e15,
  -9e15,
  '+271821-04-20T00:00:00Z',
  '',
  'x',
  '12;x',
  '\uD800',
  [],
  {},
  [[]],
  { type: 'way' },
  true,
];

/** JSON that stays JSON, with some of its values replaced. */
function mutated(text: string, changes: readonly { at: number; value: unknown }[]): string {
  let count = 0;
  JSON.stringify(JSON.parse(text), (_, value: unknown) => (count++, value));
  const where = new Map(changes.map(({ at, value }) => [1 + Math.floor(at * (count - 1)), value]));
  let i = 0;
  return JSON.stringify(JSON.parse(text), (_, value: unknown) => {
    const n = i++;
    return where.has(n) ? where.get(n) : value;
  });
}
const change = fc.record({
  at: fc.double({ min: 0, max: 0.999, noNaN: true }),
  value: fc.constantFrom(...awkward),
});

/** Damage to the letters of a file, and where it is JSON to its values. */
export const damagedText = (text: string) => {
  const letters = fc.array(damage, { minLength: 1, maxLength: 3 }).map((changes) => damaged(text, changes));
  if (!text.startsWith('{')) return letters;
  const values = fc.array(change, { minLength: 1, maxLength: 12 }).map((changes) => mutated(text, changes));
  return fc.oneof(letters, { arbitrary: values, weight: 3 });
};
