/** Upper ends in m of the wingspans of each letter; the boundary belongs to the higher one. */
const upTo = [
  ['A', 15],
  ['B', 24],
  ['C', 36],
  ['D', 52],
  ['E', 65],
  ['F', 80],
] as const;

/** An aerodrome's code letter. */
export type CodeLetter = (typeof upTo)[number][0];

/**
 * The code letter of a wingspan in m, null from 80 m on (ICAO Annex 14 Vol I table 1-1, 8th ed.; the same as EASA CS
 * ADR-DSN.A.005 table A-1).
 */
export const codeLetter = (span: number): CodeLetter | null =>
  upTo.find(([, end]) => span < end)?.[0] ?? null;
