import type { SpeedUnit } from '../units/speed';

/** How a table of past winds will be read: guessed from its head, to be mended by the user. Columns by index. */
export interface PastWindsLayout {
  readonly name: string;
  readonly text: string;
  readonly delimiter: string;
  readonly headings: readonly string[];
  readonly mapping: Readonly<
    Record<'time' | 'clock' | 'direction' | 'speed' | 'gust' | 'cloud', number | null>
  >;
  /** Null where the table does not say. */
  readonly unit: SpeedUnit | null;
  readonly clock: 'utc' | 'site';
  readonly order: 'dmy' | 'mdy';
  readonly orderUnsure: boolean;
}

export interface PastWindsRead {
  readonly observations: number;
  readonly left: readonly { readonly row: number; readonly reason: string }[];
  readonly leftCount: number;
  readonly repeated: number;
}

/** Tables of past winds: built by wind-history.ts, which knows imports and files. */
export interface PastWinds {
  pick(): Promise<File | null>;
  /** Null for a file without rows. */
  layout(file: File): Promise<PastWindsLayout | null>;
  /** Keeps what could be read in the survey; nothing is kept where nothing could. */
  read(layout: PastWindsLayout, progress: (share: number) => void): Promise<PastWindsRead>;
}
