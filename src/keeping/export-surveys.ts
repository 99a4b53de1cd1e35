import type { ArchivedFile } from '../storage/archive';
import type { Autosave } from '../storage/autosave';
import { fileName } from './survey-files';

/** The archive of a day (ms since 1970): archives sort by it. */
export const archiveName = (now: number): string =>
  `sunside-surveys-${new Date(now).toISOString().slice(0, 10)}.zip`;

/** Kept surveys as files of an archive, read one by one, each under a name of its own. */
export async function* filesOf(
  kept: readonly { readonly id: string; readonly name: string }[],
  store: Pick<Autosave, 'read'>,
): AsyncGenerator<ArchivedFile> {
  const taken = new Set<string>();
  for (const { id, name } of kept) {
    const stored = await store.read(id);
    // Another tab may have deleted it since the list was read.
    if (!stored) continue;
    const plain = fileName(name);
    let own = plain;
    for (let n = 2; taken.has(own); n++) own = plain.replace(/\.\w+$/, `-${n}$&`);
    taken.add(own);
    yield { name: own, text: stored.text, changed: stored.changed };
  }
}
