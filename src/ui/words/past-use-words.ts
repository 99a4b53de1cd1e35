import type { PastTold } from '../../figures/flown/past-use';
import type { SharesFrom } from '../../survey/schema/site';
import { months as names } from './months';

/** Recorded flights in all under which they say little. CP. */
const few = 100;

/** What shares of ends can come from where there are both. */
export const sharesChoices: readonly (readonly [SharesFrom | 'better', string])[] = [
  ['better', 'Flights if enough, else winds'],
  ['flights', 'Recorded flights alone'],
  ['winds', 'Past winds alone'],
];

/** Which of recorded flights and past winds says how often ends are in use, in sentences; none for winds alone. */
export function pastWords({ months, flights, closed, chosen, winds, needed }: PastTold): readonly string[] {
  const flown = months.flatMap((from, month) => (from === 'flights' ? [month] : []));
  const count = `${flights.toLocaleString('en')} recorded ${flights === 1 ? 'flight' : 'flights'}`;
  const left =
    closed === 0
      ? []
      : [`${closed === 1 ? '1 flight' : `${closed} flights`} to ends that are closed now do not count.`];
  return [...source(), ...left];

  function source(): readonly string[] {
    if (flights === 0) return [];
    if (chosen === 'winds') return [`Ends by past winds, as chosen: ${count} do not count.`];
    if (chosen === 'flights' || !winds)
      return [
        `Ends by ${count}${winds ? ', as chosen' : ''}: what was really used.${
          flights < few ? ' So few say little yet.' : ''
        }`,
      ];
    if (flown.length === 0)
      return [
        `Ends by past winds: ${count} do not speak for a month yet, which takes ${needed.flights} of them on ${needed.days} different days of it.`,
      ];
    if (flown.length === 12) return [`Ends by ${count}: every month has enough of them.`];
    return [
      `Ends in ${monthsWords(flown)} by recorded flights, what was really used; in the other months by past winds, what was asked for.`,
    ];
  }
}

/** "Jun to Aug, Oct": months from 0, ascending. */
export function monthsWords(list: readonly number[]): string {
  const runs: [from: number, to: number][] = [];
  for (const month of list) {
    const last = runs.at(-1);
    if (last && last[1] === month - 1) last[1] = month;
    else runs.push([month, month]);
  }
  return runs.map(([from, to]) => (from === to ? names[from] : `${names[from]} to ${names[to]}`)).join(', ');
}
