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

/** What shares of an end come from. */
export type Basis = 'wind' | 'flights';
export const bases: readonly (readonly [Basis, string])[] = [
  ['flights', 'Recorded flights: what was really used'],
  ['wind', 'Past winds: what they ask for'],
];

/** Why shares come from recorded flights, and how far so many of them can be trusted. */
export function flightsBasisWords(flights: number, few: number, winds: boolean): string {
  const count = `${flights.toLocaleString('en')} recorded ${flights === 1 ? 'flight' : 'flights'} with times`;
  const why = winds
    ? 'go before past winds: they show what was really used, whatever the wind asked for'
    : 'show what was really used';
  const doubt = flights < few ? ' So few say little yet: an hour without any takes its month’s share.' : '';
  return `${count} ${why}. Shares are of all arrivals, and of all departures.${doubt}`;
}
