import type { Contents } from '../../survey/contents';
import { monthHours, type WindRecord } from '../../survey/schema/wind-record';
import type { SharesFrom } from '../../survey/schema/site';
import { dateAt, isTimeZone, monthAt } from '../../time/local-time';
import { endShares, type EndShares } from '../traffic/flow/end-shares';
import { flowRules, type FlowContents } from '../traffic/flow/flow-for';
import { flowShares, type FlowShares } from '../traffic/flow/flow-shares';
import type { FlowRules } from '../traffic/flow/choose-flow';
import type { FlowEnd } from '../traffic/flow/offered';
import { flownShares } from './flown-shares';
import { flowsOfEnds } from './flows-of-ends';
import type { EndUse } from './end-uses';

/** Flights with times, and different days of them, from which on a month's flights speak for it before past winds do. CP. */
const fewestFlights = 20;
const fewestDays = 10;

/** What a month's shares come from; null where nothing is known of it. */
export type MonthFrom = 'flights' | 'winds' | null;

/** How often ends were in use, by recorded flights and past winds together: what there is, and which of it counts. */
export interface PastUse {
  /** January to December. */
  readonly months: readonly MonthFrom[];
  /** Recorded flights with times: those that count where flights do, and those of ends that are closed now. */
  readonly flights: number;
  readonly closed: number;
  /** Which of the two the survey wants alone, if it is there. */
  readonly chosen: SharesFrom | null;
  /** Whose clock the hours are of. */
  readonly timeZone: string;
  readonly record: WindRecord | null;
  readonly rules: FlowRules;
  readonly flown: EndShares | null;
}

/**
 * Recorded flights show what was really used; past winds what was asked for, through years. A month is told by its flights
 * if they are many and of many days: a week is one turn of the weather, however much is flown in it. All else is told
 * by the winds where there are any, else by what flights there are. The survey may say that one of the two counts alone;
 * what is not there does not. Flights to an end that is closed now tell of a field that is no more.
 */
export function pastUse(
  contents: FlowContents & Pick<Contents, 'sharesFrom'>,
  record: WindRecord | null,
  uses: readonly EndUse[],
): PastUse | null {
  const { site, sharesFrom } = contents;
  const rules = flowRules(contents);
  const timeZone = record && isTimeZone(record.timeZone) ? record.timeZone : site.timeZone;
  const timed = uses.filter(({ instant }) => instant !== null);
  const open = timed.filter((use) => isOpen(use, rules.ends));
  const flown = flownShares(open, rules.ends, timeZone);
  if (!record && !flown) return null;
  const onlyWinds = record !== null && sharesFrom === 'winds';
  const onlyFlights = flown !== null && (record === null || sharesFrom === 'flights');
  const months = monthsOf(open, timeZone).map(({ flights, days }): MonthFrom => {
    if (onlyFlights) return flights > 0 ? 'flights' : null;
    return flights >= fewestFlights && days >= fewestDays && !onlyWinds ? 'flights' : 'winds';
  });
  const isThere = { flights: flown !== null, winds: record !== null };
  return {
    months,
    chosen: sharesFrom !== null && isThere[sharesFrom] ? sharesFrom : null,
    flights: open.length,
    closed: timed.length - open.length,
    timeZone,
    record,
    rules,
    flown: flown && flown.shares,
  };
}

/** What is said of it. */
export interface PastTold extends Pick<PastUse, 'months' | 'flights' | 'closed' | 'chosen'> {
  /** Whether there is a record of past winds. */
  readonly winds: boolean;
  /** What lets a month's flights speak for it. */
  readonly needed: { readonly flights: number; readonly days: number };
}
export const toldOf = ({ months, flights, closed, chosen, record }: PastUse): PastTold => ({
  months,
  chosen,
  flights,
  closed,
  winds: record !== null,
  needed: { flights: fewestFlights, days: fewestDays },
});

/** Shares of single ends. Observations are those of the winds in a month of winds, flights in a month of flights. */
export function pastEnds({ months, record, rules, flown }: PastUse): EndShares {
  const winds = record && endShares(rules, record);
  const of = (list: keyof Pick<EndShares, 'observations' | 'undecided'>) =>
    byMonths(months, winds?.[list] ?? null, flown?.[list] ?? null);
  const shares = (['arrivals', 'departures'] as const).flatMap((use) =>
    rules.ends.map((end) => {
      const counts = (from: EndShares | null) =>
        from?.ends.find((e) => e.use === use && e.end === end)?.counts ?? null;
      return { end, use, counts: byMonths(months, counts(winds), counts(flown)) };
    }),
  );
  return {
    ends: shares.filter(({ counts }) => counts.some((n) => n > 0)),
    observations: of('observations'),
    undecided: of('undecided'),
  };
}

/** The same of ends that were in use together. */
export function pastFlows({ months, record, rules, flown }: PastUse): FlowShares {
  const winds = record && flowShares(rules, record);
  const flights = flown && flowsOfEnds(flown);
  return {
    flows: [
      ...(winds?.flows ?? []).map((flow) => ({ ...flow, counts: byMonths(months, flow.counts, null) })),
      ...(flights?.flows ?? []).map((flow) => ({ ...flow, counts: byMonths(months, null, flow.counts) })),
    ].filter(({ counts }) => counts.some((n) => n > 0)),
    observations: byMonths(months, winds?.observations ?? null, flights?.observations ?? null),
  };
}

/** Month by month from the one or the other. */
function byMonths(
  months: readonly MonthFrom[],
  winds: Float64Array | null,
  flights: Float64Array | null,
): Float64Array {
  const out = new Float64Array(monthHours);
  months.forEach((from, month) => {
    const source = from === 'winds' ? winds : from === 'flights' ? flights : null;
    if (source) out.set(source.subarray(month * 24, month * 24 + 24), month * 24);
  });
  return out;
}

function monthsOf(uses: readonly EndUse[], timeZone: string) {
  const months = Array.from({ length: 12 }, () => ({ flights: 0, days: new Set<string>() }));
  for (const { instant } of uses) {
    const month = instant === null ? undefined : months[monthAt(instant, timeZone) - 1];
    if (!month || instant === null) continue;
    month.flights++;
    month.days.add(dateAt(instant, timeZone));
  }
  return months.map(({ flights, days }) => ({ flights, days: days.size }));
}

/** Also where our own figures find an end too short for the subject: the flights show that somebody uses it. */
const isOpen = ({ runway, end }: EndUse, ends: readonly FlowEnd[]): boolean => {
  const found = ends.find(({ ref }) => ref.runway === runway && ref.end === end);
  return found !== undefined && !found.runway.ends[end].closed;
};
