import { decimal } from '../../units/format';

/** Hours of a year from those of its months: "2,181", "1,950 in 11 months" where some have no data. */
export function yearWords(byMonth: readonly (number | null)[]): string {
  const known = byMonth.filter((hours) => hours !== null);
  if (known.length === 0) return 'out of reach';
  const hours = decimal(
    known.reduce((a, b) => a + b, 0),
    0,
  );
  if (known.length === byMonth.length) return hours;
  return `${hours} in ${known.length} ${known.length === 1 ? 'month' : 'months'}`;
}

/** "63 %"; what is little but not nothing is "<1 %". */
export const percent = (share: number): string =>
  share > 0 && share < 0.005 ? '<1 %' : `${Math.round(share * 100)} %`;
