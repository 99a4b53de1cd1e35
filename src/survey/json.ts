/** JSON as it stands in a file: the survey document is made of nothing else, so saving loses nothing. */
export type Json = null | boolean | number | string | readonly Json[] | JsonObject;
export interface JsonObject {
  readonly [key: string]: Json;
}

export function isObject(value: unknown): value is JsonObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** What a message shows of a value it complains about: short, whatever the file holds. */
export function shown(value: unknown): string {
  const text = value === undefined ? 'nothing' : JSON.stringify(value);
  return text.length > 40 ? `${text.slice(0, 37)}...` : text;
}
