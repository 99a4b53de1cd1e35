import type { MovementFigures } from '../figures/movements/movement-figures';
import type { Movement } from '../survey/schema/movement';

export type NewMovement = Omit<Movement, 'id'>;

/** How a list of movements will be read: guessed, to be mended by the user. Columns by index. */
export interface MovementLayout {
  readonly headings: readonly string[];
  readonly rows: readonly {
    readonly row: number;
    readonly cells: readonly string[];
    readonly starred?: boolean;
  }[];
  readonly mapping: Readonly<
    Record<'time' | 'date' | 'use' | 'type' | 'flight' | 'from' | 'to' | 'runway', number | null>
  >;
  readonly clock: 'site' | 'utc';
  readonly order: 'dmy' | 'mdy';
  readonly use: Movement['use'] | null;
  readonly date: string | null;
}

export interface MovementReading {
  readonly movements: readonly NewMovement[];
  readonly left: readonly { readonly row: number; readonly reason: string }[];
  readonly remarks: readonly string[];
  /** Types that no subject is known by, with the key of the class that comes nearest ("" for none). */
  readonly unknown: readonly { readonly type: string; readonly nearest: string }[];
}

/** Lists of movements: built by movements.ts, which knows imports, exports and files. */
export interface MovementLists {
  pick(): Promise<File | null>;
  textOf(file: File): Promise<string>;
  /** Null for a text in which there is nothing. */
  layout(text: string): Promise<MovementLayout | null>;
  /** Changes nothing: says what would come in. */
  read(layout: MovementLayout): Promise<MovementReading>;
  /** Adds what was read; types by which no subject is known take the subjects chosen for them. */
  add(reading: MovementReading, subjects: Readonly<Record<string, string>>): void;
  /** Adds one movement typed in a line; null, or why it cannot be read. `everyDay`: it has no date. */
  type(line: string, everyDay: boolean): Promise<string | null>;
  /** Saves to a file: by the browser's file access, or as a download. */
  save(figures: readonly MovementFigures[]): Promise<void>;
}
