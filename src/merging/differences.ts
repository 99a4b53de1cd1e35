import { isObject, type Json } from '../survey/json';
import { pointerTo } from './questions';
import { sameJson } from './same-json';

/** Where two values differ: pointers (RFC 6901) to the innermost members that are not alike. A list is one value. */
export function differences(
  before: Json | undefined,
  after: Json | undefined,
  pointer = '',
): readonly string[] {
  if (sameJson(before, after)) return [];
  if (!isObject(before) || !isObject(after)) return [pointer];
  const keys = new Set([...Object.keys(before), ...Object.keys(after)]);
  return [...keys].flatMap((key) => differences(own(before, key), own(after, key), pointerTo(pointer, key)));
}

const own = (object: Readonly<Record<string, Json>>, key: string): Json | undefined =>
  Object.hasOwn(object, key) ? object[key] : undefined;
