import type { Tool } from '../../state/view.svelte';
import { drawingOf, drawings, type DrawTool } from '../../survey/drawings';

/** What a key may do anywhere on the page, besides taking a tool in hand. */
export type PageAction = 'undo' | 'redo' | 'search' | 'open' | 'save' | 'shortcuts';

export type Shortcut = { readonly does: PageAction } | { readonly does: 'tool'; readonly tool: Tool };

interface PageKey {
  readonly does: PageAction;
  readonly words: string;
  /** The character, in small letters. */
  readonly key: string;
  /** With Control, or Command on a Mac. */
  readonly control: boolean;
  /** Null where the keyboard decides whether the character needs it. */
  readonly shift: boolean | null;
}

/** The keys of the page: the table that answers them, and that the list of short cuts is written from. */
export const pageKeys: readonly PageKey[] = [
  { does: 'search', words: 'Find an airfield', key: '/', control: false, shift: null },
  { does: 'undo', words: 'Undo', key: 'z', control: true, shift: false },
  { does: 'redo', words: 'Redo', key: 'z', control: true, shift: true },
  { does: 'redo', words: 'Redo', key: 'y', control: true, shift: false },
  { does: 'open', words: 'Open a survey file', key: 'o', control: true, shift: false },
  { does: 'save', words: 'Save the survey to a file', key: 's', control: true, shift: false },
  { does: 'shortcuts', words: 'Show this list', key: '?', control: false, shift: null },
];

interface ToolWords {
  readonly name: string;
  readonly key: string;
  readonly hint: string;
  /** The same for a finger, where it differs. */
  readonly touch?: string;
}

/** What each tool is called, its key and what the pointer does with it. */
const toolWords: Readonly<Record<Tool, ToolWords>> = {
  select: {
    name: 'Select',
    key: 'v',
    hint: 'Click something to select it. Drag it or one of its corners to move it.',
    touch: 'Tap something to select it. Hold it, or take its handle, to move it.',
  },
  runway: {
    name: 'Runway',
    key: 'r',
    hint: 'Click the first end of the runway, then the other.',
    touch: 'Tap its two ends, or drag from one to the other.',
  },
  'standing-spot': {
    name: 'Standing spot',
    key: 's',
    hint: 'Click where you would stand.',
    touch: 'Tap where you would stand.',
  },
  'taxi-route': {
    name: 'Taxi route',
    key: 't',
    hint: 'Click along the route; a double click or Enter ends it.',
    touch: 'Tap along the route, then Finish.',
  },
  apron: {
    name: 'Apron',
    key: 'a',
    hint: 'Click the corners of the apron; a double click or Enter closes it.',
    touch: 'Tap its corners, then Finish.',
  },
  'no-go': {
    name: 'No-go area',
    key: 'n',
    hint: 'Click the corners of the ground where nobody may stand; a double click or Enter closes it.',
    touch: 'Tap the corners of the ground where nobody may stand, then Finish.',
  },
  obstacle: {
    name: 'Building',
    key: 'b',
    hint: 'Click the corners of a building or block that hides what is behind; a double click or Enter closes it.',
    touch: 'Tap the corners of what hides the view, then Finish.',
  },
  'obstacle-line': {
    name: 'Wall or trees',
    key: 'w',
    hint: 'Click along a wall, fence or tree line; a double click or Enter ends it. Then say how high it is.',
    touch: 'Tap along a wall, fence or tree line, then Finish.',
  },
  hedge: {
    name: 'Hedge',
    key: 'h',
    hint: 'Click along the hedge; a double click or Enter ends it. Then say how high it is, and from where down one sees under it.',
    touch: 'Tap along the hedge, then Finish.',
  },
  'flight-path': {
    name: 'Flight path',
    key: 'f',
    hint: 'Click the waypoints in the order in which they are flown; a double click or Enter ends it. Then type their altitudes.',
    touch: 'Tap the waypoints in the order in which they are flown, then Finish.',
  },
  'display-line': {
    name: 'Display line',
    key: 'd',
    hint: 'Click the two ends of the line that the display flies along.',
    touch: 'Tap the two ends of the line that the display flies along.',
  },
  'crowd-line': {
    name: 'Crowd line',
    key: 'c',
    hint: 'Click along the line up to which the public may stand; a double click or Enter ends it.',
    touch: 'Tap along the line up to which the public may stand, then Finish.',
  },
  helipad: {
    name: 'Helipad',
    key: 'p',
    hint: 'Click where helicopters land.',
    touch: 'Tap where helicopters land.',
  },
  'winch-run': {
    name: 'Winch run',
    key: 'k',
    hint: 'Click where gliders are launched, then where the winch stands.',
    touch: 'Tap where gliders are launched, then where the winch stands.',
  },
};

/** The tools of the tool bar in their order; those that are seldom wanted stand behind the others. */
export const tools: readonly (ToolWords & { readonly tool: Tool; readonly seldom: boolean })[] = (
  ['select', ...(Object.keys(drawings) as DrawTool[])] as const
).map((tool) => ({
  tool,
  ...toolWords[tool],
  seldom: tool !== 'select' && drawingOf(tool).seldom === true,
}));

type Key = Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'shiftKey' | 'altKey'>;

/**
 * What a key press asks for anywhere on the page; null for every other key. `single` says whether keys without
 * Control count: speech input and shaky hands press them by mistake (WCAG 2.1.4).
 */
export function shortcutOf({ key, ctrlKey, metaKey, shiftKey, altKey }: Key, single = true): Shortcut | null {
  const letter = key.toLowerCase();
  const control = ctrlKey || metaKey;
  if (altKey || (!control && !single)) return null;
  const found = pageKeys.find(
    (p) => p.key === letter && p.control === control && (p.shift === null || p.shift === shiftKey),
  );
  if (found) return { does: found.does };
  if (control || shiftKey) return null;
  const tool = tools.find((t) => t.key === letter)?.tool;
  return tool ? { does: 'tool', tool } : null;
}

/** The first key of an action as a person reads it, "Ctrl+Shift+Z". */
export function keyOf(action: PageAction): string {
  const found = pageKeys.find((p) => p.does === action);
  return found ? keyWords(found) : '';
}
export const keyWords = ({ key, control, shift }: Pick<PageKey, 'key' | 'control' | 'shift'>): string =>
  [...(control ? ['Ctrl'] : []), ...(shift ? ['Shift'] : []), key.toUpperCase()].join('+');

/** Where keys write text, or belong to a dialog or a menu: no short cut may take them away. */
export const typingSelector =
  'input:not([type="checkbox"], [type="radio"]), textarea, select, dialog, [popover], [contenteditable]';
