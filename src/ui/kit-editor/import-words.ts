import type { ListName } from '../../survey/kit-lists';
import type { TableReading } from '../../ports/tables';
import { countWords } from './words';

/** What a table would bring, in one sentence. */
export function importWords(
  list: ListName,
  { entries, left }: TableReading<ListName> & { ok: true },
): string {
  const count = (change: string) => entries.filter((entry) => entry.change === change).length;
  const parts = [
    [count('new'), (n: number) => `${countWords(n, list)} would come in`],
    [count('replaces'), (n: number) => `${countWords(n, list)} would replace what has the same key`],
    [count('same'), (n: number) => `${countWords(n, list)} ${n === 1 ? 'is' : 'are'} there already just so`],
    [left.length, (n: number) => `${n} ${n === 1 ? 'row is' : 'rows are'} left out`],
  ] as const;
  const said = parts.filter(([n]) => n > 0).map(([n, words]) => words(n));
  return said.length === 0 ? 'The table has headings, but no rows.' : `${said.join('; ')}.`;
}
