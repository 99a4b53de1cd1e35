import type { Contents } from '../../survey/contents';
import { dateAt, minuteOfDay, monthAt, parseInstant } from '../../time/local-time';
import { spreadOf } from '../flown/percentile';
import { keeper } from './practice';

export interface Taught {
  /** Days on which something was photographed from the spot. */
  readonly visits: number;
  /** When the keepers were taken: minutes since midnight at the site, and the month (1 to 12) of at least half of them. */
  readonly best: { readonly from: number; readonly to: number; readonly month: number | null } | null;
}

/** Keepers from which on they say when it is best. CP. */
const leastKeepers = 3;
/** Minutes to which hours are told. */
const told = 10;

/** What the log says of a spot: how often one was there, and when what was worth keeping was taken (the middle half). Null without a log. */
export function whatItTeaches(
  spot: string,
  { logEntries, site: { timeZone } }: Pick<Contents, 'logEntries' | 'site'>,
): Taught | null {
  const here = logEntries.flatMap((entry) => {
    const instant = entry.spot === spot && entry.time !== null ? parseInstant(entry.time) : null;
    return instant === null ? [] : [{ instant, kept: entry.kept ?? 0 }];
  });
  if (here.length === 0) return null;
  const visits = new Set(here.map(({ instant }) => dateAt(instant, timeZone))).size;
  const keepers = here.filter(({ kept }) => kept >= keeper);
  const hours = spreadOf(keepers.map(({ instant }) => minuteOfDay(instant, timeZone)));
  if (!hours || keepers.length < leastKeepers) return { visits, best: null };
  const counts = new Map<number, number>();
  for (const { instant } of keepers) {
    const month = monthAt(instant, timeZone);
    counts.set(month, (counts.get(month) ?? 0) + 1);
  }
  const [most] = [...counts].toSorted((a, b) => b[1] - a[1]);
  return {
    visits,
    best: {
      from: Math.floor(hours.low / told) * told,
      to: Math.ceil(hours.high / told) * told,
      month: most && most[1] * 2 >= keepers.length ? most[0] : null,
    },
  };
}
