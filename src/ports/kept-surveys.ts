/** A survey in the list of those kept on this device. */
export interface KeptSurvey {
  readonly id: string;
  readonly name: string;
  /** ms since 1970. */
  readonly changed: number;
  /** Length of its text. */
  readonly size: number;
  /** The airfield's code, or coordinates where there is no name either ("" for neither), the planned day (ISO 8601, null for none); null where nothing is known. */
  readonly facts: {
    readonly place: string;
    readonly date: string | null;
    readonly spots: number;
    readonly at?: readonly [lng: number, lat: number] | null;
  } | null;
}

export interface KeptList {
  /** Changed last first. */
  readonly kept: readonly KeptSurvey[];
  /** Deleted ones that can still be put back. */
  readonly deleted: readonly KeptSurvey[];
  /** Why the browser keeps no list, null where it does. */
  readonly trouble: string | null;
  /** Whether the browser may clear all this when space runs short. */
  readonly keeping: 'kept' | 'may-be-cleared' | 'unknown';
  /** Bytes; null where the browser does not say. */
  readonly room: { readonly used: number; readonly quota: number } | null;
}

/** The surveys on this device. What each did, or why it could not, stands in the notice. */
export interface Surveys {
  /** Null until it is read for the first time. */
  readonly list: KeptList | null;
  /** Which survey this tab shows. */
  readonly openId: string;
  refresh(): Promise<void>;
  /** The list is not shown any more: nothing needs to keep it up to date. */
  close(): void;
  open(id: string): Promise<void>;
  rename(survey: KeptSurvey, name: string): Promise<void>;
  duplicate(survey: KeptSurvey): Promise<void>;
  /** With an undo in the notice. */
  remove(survey: KeptSurvey): Promise<void>;
  putBack(id: string): Promise<void>;
  /** Forgets a deleted survey for good. */
  discard(id: string): Promise<void>;
  /** Files and archives, picked where none are given; the open survey stays open. */
  importFiles(files?: readonly File[]): Promise<void>;
  exportAll(): Promise<void>;
  /** Asks the browser to clear nothing. */
  askToKeep(): Promise<void>;
}
