import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { whereJsonBreaks } from '../../src/survey/json-place';

const parses = (text: string) => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

describe('where JSON breaks', () => {
  test.each([
    ['', 0],
    ['  ', 2],
    ['nul', 0],
    ['{"a": 1,}', 8],
    ['{"a" 1}', 5],
    ['{a: 1}', 1],
    ['[1 2]', 3],
    ['[1, ]', 4],
    ['[1}', 2],
    ['{"a": [}', 7],
    ['{]', 1],
    ['[01]', 2],
    ["['a']", 1],
    ['["a\nb"]', 1],
    ['["\\x"]', 1],
    ['{} {}', 3],
    ['{"a": {"b": [1, 2', 17],
    ['1,', 1],
    [']', 0],
  ])('[S12] %j at %d', (text, offset) => {
    expect(whereJsonBreaks(text)).toBe(offset);
  });

  test('[S12] nowhere exactly in what JSON.parse takes', () => {
    const tokens = fc.constantFrom(
      '{',
      '}',
      '[',
      ']',
      ',',
      ':',
      '"a"',
      '"\\n\\u00e9"',
      '-1.5e3',
      '0',
      'true',
      ' ',
    );
    const texts = fc.oneof(
      fc.json(),
      fc.array(tokens, { maxLength: 7 }).map((list) => list.join('')),
    );
    fc.assert(
      fc.property(texts, (text) => {
        expect(whereJsonBreaks(text) === null).toBe(parses(text));
      }),
      { seed: 8259, numRuns: 3000 },
    );
  });
});
