import type { Contents } from '../../survey/contents';
import type { ListEntries, ListName } from '../../survey/kit-lists';

/** One of the lists of a survey as it is read. */
export function entriesOf<L extends ListName>(contents: Contents, list: L): readonly ListEntries[L][] {
  const lists: { readonly [N in ListName]: readonly ListEntries[N][] } = {
    bodies: contents.kit.bodies,
    lenses: contents.kit.lenses,
    subjects: contents.subjects,
  };
  return lists[list];
}

/** What keeps keys apart: those of a list but for one. */
export const keysBeside = (
  entries: readonly { readonly key: string }[],
  key: string | null,
): ReadonlySet<string> => new Set(entries.map((entry) => entry.key).filter((other) => other !== key));
