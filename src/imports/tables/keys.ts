import { freshKey } from '../../survey/entry-key';

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
  return same ? same.key : freshKey(name, new Set(existing.map((entry) => entry.key)));
}
