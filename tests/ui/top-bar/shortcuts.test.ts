import { describe, expect, test } from 'vitest';
import { keyOf, keyWords, pageKeys, shortcutOf, tools } from '../../../src/ui/top-bar/shortcuts';

const press = (key: string, ...held: ('ctrlKey' | 'metaKey' | 'shiftKey' | 'altKey')[]) =>
  shortcutOf({
    key,
    ctrlKey: held.includes('ctrlKey'),
    metaKey: held.includes('metaKey'),
    shiftKey: held.includes('shiftKey'),
    altKey: held.includes('altKey'),
  });

describe('keys anywhere on the page', () => {
  test('undo and redo, with the keys of every system', () => {
    expect(press('z', 'ctrlKey')).toEqual({ does: 'undo' });
    expect(press('Z', 'ctrlKey', 'shiftKey')).toEqual({ does: 'redo' });
    expect(press('y', 'ctrlKey')).toEqual({ does: 'redo' });
    expect(press('z', 'metaKey')).toEqual({ does: 'undo' });
  });

  test('letters choose tools, in either case', () => {
    expect(['v', 'R', 's', 't', 'a', 'n'].map((key) => press(key))).toEqual(
      ['select', 'runway', 'standing-spot', 'taxi-route', 'apron', 'no-go'].map((tool) => ({
        does: 'tool',
        tool,
      })),
    );
  });

  test('a slash searches on every keyboard, with Shift where the slash needs it', () => {
    expect(press('/')).toEqual({ does: 'search' });
    expect(press('/', 'shiftKey')).toEqual({ does: 'search' });
  });

  test('what the browser does with other keys is left to it', () => {
    expect(press('r', 'ctrlKey')).toBeNull();
    expect(press('a', 'metaKey')).toBeNull();
    expect(press('s', 'ctrlKey', 'shiftKey')).toBeNull();
    expect(press('z')).toBeNull();
    expect(press('a', 'shiftKey')).toBeNull();
    expect(press('n', 'altKey')).toBeNull();
    expect(press('Enter')).toBeNull();
  });

  test('no two tools share a key', () => {
    expect(new Set(tools.map((t) => t.key)).size).toBe(tools.length);
  });

  test('[U11] every key in the list of short cuts does what the list says', () => {
    for (const { does, key, control, shift } of pageKeys)
      expect(
        press(key, ...(control ? ['ctrlKey' as const] : []), ...(shift ? ['shiftKey' as const] : [])),
      ).toEqual({
        does,
      });
    expect(keyOf('redo')).toBe('Ctrl+Shift+Z');
    expect(pageKeys.map(keyWords)).toContain('?');
    const all = [...pageKeys.map(keyWords), ...tools.map((t) => t.key.toUpperCase())];
    expect(new Set(all).size).toBe(all.length);
  });

  test('[U12] single keys can be switched off; keys with Control stay', () => {
    const key = (name: string, ctrlKey = false) =>
      shortcutOf({ key: name, ctrlKey, metaKey: false, shiftKey: false, altKey: false }, false);
    expect([key('r'), key('/'), key('?')]).toEqual([null, null, null]);
    expect(key('z', true)).toEqual({ does: 'undo' });
  });
});
