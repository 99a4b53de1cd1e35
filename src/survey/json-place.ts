/** White space, then one token: a bracket or separator, a string, or a number or word (RFC 8259). */
const token =
  /[ \t\n\r]*(?:([{}[\],:])|("(?:[ !#-[\]-\uffff]|\\(?:["\\/bfnrt]|u[\da-fA-F]{4}))*")|(-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null))/y;

type Expected = 'value' | 'value-or-end' | 'name' | 'name-or-end' | 'colon' | 'next';

/** What may follow a token, or null where the token itself may not stand. `open`: the brackets not yet closed. */
function after(mark: string, expected: Expected, open: string[]): Expected | null {
  const takesValue = expected === 'value' || expected === 'value-or-end';
  const takesName = expected === 'name' || expected === 'name-or-end';
  const ends = expected === 'next' || expected.endsWith('-or-end');
  switch (mark) {
    case '{':
    case '[':
      if (!takesValue) return null;
      open.push(mark);
      return mark === '{' ? 'name-or-end' : 'value-or-end';
    case '}':
    case ']':
      return ends && expected !== (mark === '}' ? 'value-or-end' : 'name-or-end') && closes(open, mark)
        ? 'next'
        : null;
    case ',':
      if (expected !== 'next' || open.length === 0) return null;
      return open.at(-1) === '{' ? 'name' : 'value';
    case ':':
      return expected === 'colon' ? 'value' : null;
    default:
      if (takesName) return mark === 'string' ? 'colon' : null;
      return takesValue ? 'next' : null;
  }
}

const closes = (open: string[], mark: string): boolean => open.pop() === (mark === '}' ? '{' : '[');

/**
 * Offset at which a text stops being JSON: its length when it only breaks off, null when it is JSON. Engines name
 * the place of some errors only, each in its own words.
 */
export function whereJsonBreaks(text: string): number | null {
  const open: string[] = [];
  let expected: Expected = 'value';
  let at = 0;
  for (;;) {
    token.lastIndex = at;
    const match = token.exec(text);
    if (!match) {
      const blank = /[ \t\n\r]*/y;
      blank.lastIndex = at;
      const offset = at + (blank.exec(text)?.[0].length ?? 0);
      return offset === text.length && expected === 'next' && open.length === 0 ? null : offset;
    }
    const mark = match[1] ?? (match[2] === undefined ? 'word' : 'string');
    const next = after(mark, expected, open);
    if (next === null) return token.lastIndex - (match[1] ?? match[2] ?? match[3] ?? '').length;
    expected = next;
    at = token.lastIndex;
  }
}
