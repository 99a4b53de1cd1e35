import type { Tool } from '../../state/view.svelte';

export type Shortcut =
  | { readonly does: 'undo' | 'redo' | 'search' | 'open' | 'save' }
  | { readonly does: 'tool'; readonly tool: Tool };

/** The tools of the tool bar in their order, with their keys and what the pointer does with each. */
export const tools: readonly {
  readonly tool: Tool;
  readonly name: string;
  readonly key: string;
  readonly hint: string;
}[] = [
  {
    tool: 'select',
    name: 'Select',
    key: 'v',
    hint: 'Click something to select it. Drag it or one of its corners to move it.',
  },
  {
    tool: 'runway',
    name: 'Runway',
    key: 'r',
    hint: 'Click the first end of the runway, then the other.',
  },
  {
    tool: 'standing-spot',
    name: 'Standing spot',
    key: 's',
    hint: 'Click where you would stand.',
  },
  {
    tool: 'taxi-route',
    name: 'Taxi route',
    key: 't',
    hint: 'Click along the route; a double click or Enter ends it.',
  },
  {
    tool: 'apron',
    name: 'Apron',
    key: 'a',
    hint: 'Click the corners of the apron; a double click or Enter closes it.',
  },
  {
    tool: 'no-go',
    name: 'No-go area',
    key: 'n',
    hint: 'Click the corners of the ground where nobody may stand; a double click or Enter closes it.',
  },
];

type Key = Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'shiftKey' | 'altKey'>;

/** What a key press asks for anywhere on the page; null for every other key. */
export function shortcutOf({ key, ctrlKey, metaKey, shiftKey, altKey }: Key): Shortcut | null {
  const letter = key.toLowerCase();
  if (altKey) return null;
  if (ctrlKey || metaKey) {
    if (letter === 'z') return { does: shiftKey ? 'redo' : 'undo' };
    if (shiftKey) return null;
    if (letter === 'y') return { does: 'redo' };
    if (letter === 'o') return { does: 'open' };
    return letter === 's' ? { does: 'save' } : null;
  }
  if (key === '/') return { does: 'search' };
  const tool = shiftKey ? undefined : tools.find((t) => t.key === letter)?.tool;
  return tool ? { does: 'tool', tool } : null;
}

/** Where keys write text, or belong to a dialog: no short cut may take them away. */
export const typingSelector =
  'input:not([type="checkbox"], [type="radio"]), textarea, select, dialog, [contenteditable]';
