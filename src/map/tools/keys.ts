/** What one key, or any of several, does on the map. */
export interface MapKey {
  /** As `KeyboardEvent.key` has them. */
  readonly keys: readonly string[];
  readonly words: string;
  /** How the list of short cuts writes them, where their names do not say it. */
  readonly written?: readonly string[];
}

/** The keys that draw: the tool answers from this table, and the list of short cuts is written from it. */
export const drawKeys = {
  set: { keys: [' '], words: 'Set a corner at the cross in the middle of the map', written: ['Space'] },
  finish: { keys: ['Enter'], words: 'End the drawing; set the corner while there are too few' },
  back: { keys: ['Backspace'], words: 'Take the last corner back' },
  giveUp: { keys: ['Escape'], words: 'Give the drawing up; then the tool' },
} as const satisfies Record<string, MapKey>;

/** The keys for what is selected. */
export const selectKeys = {
  nudge: {
    keys: ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown'],
    words: 'Move what is selected by 1 m; with Shift 10 m, with Alt 0.1 m',
    written: ['Arrow keys'],
  },
  nextCorner: { keys: [']', 'PageDown'], words: 'Choose its next corner', written: [']', 'Page down'] },
  lastCorner: { keys: ['[', 'PageUp'], words: 'Choose the corner before', written: ['[', 'Page up'] },
  remove: { keys: ['Delete', 'Backspace'], words: 'Delete the chosen corner, or all that is selected' },
  giveUp: { keys: ['Escape'], words: 'Give up a drag; then corner, point of a path, selection' },
} as const satisfies Record<string, MapKey>;

/** The keys for the view of the map. Without a selection the arrow keys alone pan as well. */
export const viewKeys = {
  pan: {
    keys: ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown'],
    words: 'Pan the map; without Ctrl too, while nothing is selected',
    written: ['Ctrl+Arrow keys'],
  },
  nearer: { keys: ['+', '='], words: 'Zoom in', written: ['+'] },
  farther: { keys: ['-', '_'], words: 'Zoom out', written: ['-'] },
  all: { keys: ['Home'], words: 'Show the whole survey' },
  selected: { keys: ['End'], words: 'Centre the map on what is selected' },
} as const satisfies Record<string, MapKey>;

/** Which line of a table a key belongs to. */
export function actionOf<T extends Readonly<Record<string, MapKey>>>(table: T, key: string): keyof T | null {
  return Object.keys(table).find((name) => table[name]?.keys.includes(key)) ?? null;
}

/** The tables as the list of short cuts shows them. */
export const mapKeyGroups: readonly { readonly title: string; readonly lines: readonly MapKey[] }[] = [
  { title: 'On the map', lines: Object.values(viewKeys) },
  { title: 'On the map, for what is selected', lines: Object.values(selectKeys) },
  { title: 'On the map, while drawing', lines: Object.values(drawKeys) },
];
