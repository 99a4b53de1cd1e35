import type { ListEntries, ListName } from '../survey/kit-lists';

/** What a table of bodies, lenses or subjects would bring, before anything is changed. */
export type TableReading<L extends ListName> =
  | {
      readonly ok: true;
      readonly entries: readonly {
        readonly row: number;
        readonly entry: ListEntries[L];
        readonly change: 'new' | 'replaces' | 'same';
      }[];
      readonly left: readonly { readonly row: number; readonly reason: string }[];
      readonly remarks: readonly string[];
    }
  | { readonly ok: false; readonly reason: string };

/** Tables (CSV) of the kit and the subjects: built by tables.ts, which knows imports, exports and files. */
export interface Tables {
  /** Lets the user pick one; null when they think better of it. */
  pick(): Promise<File | null>;
  /** Changes nothing: says what would come in, beside what is there already. */
  read<L extends ListName>(
    list: L,
    file: File,
    existing: readonly ListEntries[L][],
  ): Promise<TableReading<L>>;
  /** Saves to a file: by the browser's file access, or as a download. */
  save<L extends ListName>(list: L, entries: readonly ListEntries[L][]): Promise<void>;
}
