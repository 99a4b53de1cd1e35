/** JSON as it stands in a file: the survey document is made of nothing else, so saving loses nothing. */
export type Json = null | boolean | number | string | readonly Json[] | JsonObject;
export interface JsonObject {
  readonly [key: string]: Json;
}

export function isObject(value: unknown): value is JsonObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** The first characters of a text; a pair of UTF-16 units is not cut in two. */
export function beginning(text: string, length: number): string {
  const last = text.charCodeAt(length - 1);
  return text.slice(0, last >= 0xd800 && last < 0xdc00 ? length - 1 : length);
}

const mostShown = 40;

/** What a message shows of a value it complains about: short, whatever the file holds. */
export function shown(value: unknown): string {
  if (value === undefined) return 'nothing';
  const text = begun(value, mostShown + 1);
  return text.length > mostShown ? `${beginning(text, mostShown - 3)}...` : text;
}

/** The beginning of a value's JSON, at least `least` characters of it where there are so many. */
function begun(value: unknown, least: number): string {
  if (typeof value === 'string') return JSON.stringify(value.length > least ? value.slice(0, least) : value);
  if (typeof value !== 'object' || value === null) return String(JSON.stringify(value) ?? 'null');
  const list = Array.isArray(value);
  let text = list ? '[' : '{';
  // Each level takes a character, so this goes no deeper than what is shown.
  for (const key in value) {
    if (text.length >= least) return text;
    if (!Object.hasOwn(value, key)) continue;
    if (text.length > 1) text += ',';
    if (!list) text += `${begun(key, least)}:`;
    text += begun((value as Record<string, unknown>)[key], least - text.length);
  }
  return text + (list ? ']' : '}');
}

export interface Extent {
  /** How deep lists and objects lie within one another; looked at down to `most` and one more. */
  readonly depth: number;
  /** Numbers that JSON can write and no program can hold: 1e999 is read as infinite, and would be saved as null. */
  readonly infinite: number;
}

/** By hand, level by level: on what is nested too deep the call stack would run out. */
export function extentOf(value: unknown, most: number): Extent {
  let level: object[] = typeof value === 'object' && value !== null ? [value] : [];
  let infinite = 0;
  let depth = 0;
  for (; level.length > 0 && depth <= most; depth++) {
    const next: object[] = [];
    for (const holder of level) {
      // A list is its own values: most of what is in a file are positions.
      const members = Array.isArray(holder) ? (holder as unknown[]) : (Object.values(holder) as unknown[]);
      for (let i = 0; i < members.length; i++) {
        const member = members[i];
        if (typeof member === 'object' && member !== null) next.push(member);
        else if (member === Infinity || member === -Infinity) infinite++;
      }
    }
    level = next;
  }
  return { depth, infinite };
}
