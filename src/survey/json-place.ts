/** Bracket states: what may stand next. */
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

/** A number or word (RFC 8259). */
const word = /(?:-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null)/y;
const escape = /\\(?:["\\/bfnrt]|u[\da-fA-F]{4})/y;

const quote = 0x22;
const backslash = 0x5c;
const isBlank = (code: number) => code === 0x20 || code === 0x0a || code === 0x0d || code === 0x09;

/**
 * Where the string that begins at `start` ends, after its closing quote; null where it is none. By hand: a regular
 * expression runs out of stack on strings of megabytes.
 */
function stringEnd(text: string, start: number): number | null {
  for (let at = start + 1; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === quote) return at + 1;
    if (code < 0x20) return null;
    if (code !== backslash) continue;
    escape.lastIndex = at;
    if (!escape.test(text)) return null;
    at = escape.lastIndex - 1;
  }
  return null;
}

function tokenEnd(text: string, at: number): number | null {
  const code = text.charCodeAt(at);
  if (code === quote) return stringEnd(text, at);
  // { } [ ] , :
  if (code === 0x7b || code === 0x7d || code === 0x5b || code === 0x5d || code === 0x2c || code === 0x3a)
    return at + 1;
  word.lastIndex = at;
  return word.test(text) ? word.lastIndex : null;
}

/**
 * Offset at which a text stops being JSON: its length when it only breaks off, null when it is JSON. Engines name
 * the place of some errors only, each in its own words.
 */
export function whereJsonBreaks(text: string): number | null {
  const open: string[] = [];
  let expected: Expected = 'value';
  let at = 0;
  for (;;) {
    while (at < text.length && isBlank(text.charCodeAt(at))) at++;
    const end = at < text.length ? tokenEnd(text, at) : null;
    if (end === null) return at === text.length && expected === 'next' && open.length === 0 ? null : at;
    const first = text.charAt(at);
    const mark = '{}[],:'.includes(first) ? first : first === '"' ? 'string' : 'word';
    const next = after(mark, expected, open);
    if (next === null) return at;
    expected = next;
    at = end;
  }
}
