import { expect, test } from 'vitest';
import { codeLetter } from '../../src/survey/code-letter';
import { starterSubjects } from '../../src/survey/starter/subjects';

/** EASA CS ADR-DSN.A.005 table A-1 (ED 2017/021/R), as ICAO Annex 14 Vol I table 1-1; the last five are sizes of types. */
const rows = [
  [14.99, 'A'],
  [15, 'B'],
  [23.99, 'B'],
  [24, 'C'],
  [35.99, 'C'],
  [36, 'D'],
  [51.99, 'D'],
  [52, 'E'],
  [64.99, 'E'],
  [65, 'F'],
  [79.99, 'F'],
  [80, null],
  [11, 'A'],
  [27.05, 'C'],
  [34.32, 'C'],
  [38.05, 'D'],
  [79.75, 'F'],
] as const;

test.each(rows)('[R106] a span of %s m has the code letter %s', (span, letter) => {
  expect(codeLetter(span)).toBe(letter);
});

test('[F315] the starter has one class a code letter, each of a span of that letter', () => {
  const classes = starterSubjects.filter((s) => s.key.startsWith('any-code-'));
  expect(classes.map((s) => [s.key.slice(-1).toUpperCase(), codeLetter(s.span)])).toEqual(
    ['A', 'B', 'C', 'D', 'E', 'F'].map((letter) => [letter, letter]),
  );
  expect(classes.every((s) => s.name.includes(`Code ${codeLetter(s.span) ?? ''}`))).toBe(true);
});
