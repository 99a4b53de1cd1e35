import type { AltitudeMeaning, Answers as ImportAnswers } from '../imports/bring-in/types';

// What the preview of an import asks is what the imports answer to.
export type { AltitudeMeaning, ImportAnswers };

/** Things of one kind that would come in. */
export interface ImportGroup {
  readonly name: string;
  /** Not in the survey yet; there, and said otherwise by the source now; there just so. */
  readonly fresh: number;
  readonly changed: number;
  readonly same: number;
  /** Of those that come in, how many have a height that nobody has stated. */
  readonly assumed: number;
  /** A few of their names. */
  readonly names: readonly string[];
}

/** What files would bring, before anything is changed. */
export interface ImportPreview {
  readonly groups: readonly ImportGroup[];
  readonly leftOut: readonly { readonly what: string; readonly reason: string; readonly count: number }[];
  readonly remarks: readonly string[];
  readonly credits: readonly string[];
  /** Which questions make a difference. */
  readonly asks: {
    readonly radius: boolean;
    readonly buildingHeight: boolean;
    readonly altitude: boolean;
    readonly altitudeUnit: boolean;
    readonly airfields: readonly {
      readonly ident: string;
      readonly name: string;
      /** m from the survey's reference, null without one. */
      readonly away: number | null;
    }[];
  };
  /** Set when the files are about another place: how many m away, null where the survey does not say where it is. */
  readonly elsewhere: { readonly away: number; readonly startThere: () => Promise<void> } | null;
}

/** Files that are being brought in. */
export interface ImportUnderWay {
  readonly files: readonly string[];
  /** Share of the reading that is done, 0 to 1; null once all is read. */
  readonly progress: number | null;
  /** "field.osm: ..." for files that could not be read. */
  readonly refused: readonly string[];
  /** Null until the files are read. */
  readonly preview: ImportPreview | null;
  readonly answers: ImportAnswers;
  /** Names of the groups that are ticked. */
  readonly ticked: readonly string[];
  answer(answers: Partial<ImportAnswers>): void;
  tick(group: string, on: boolean): void;
  /** Brings in what is ticked, as one undo step, a little at a time. */
  take(): void;
  /** It is being brought in. */
  readonly taking: boolean;
  /** Stops reading, or forgets what was read: nothing has changed. */
  close(): void;
}

/** Maps, tables and flights that others have made: built by bring-in.svelte.ts, which knows the imports. */
export interface Imports {
  /** Null while nothing is being brought in. */
  readonly underWay: ImportUnderWay | null;
  /** Lets the user pick files. */
  pick(): Promise<void>;
  /** Files that were dropped on the page: a survey is opened, anything else is previewed. */
  drop(files: readonly File[]): Promise<void>;
  /** The same of folders: what no import reads is passed over. */
  dropFolders(items: DataTransferItemList): Promise<void>;
}
