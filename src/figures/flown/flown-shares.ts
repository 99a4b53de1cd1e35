import { monthHours } from '../../survey/schema/wind-record';
import { minuteOfDay, monthAt } from '../../time/local-time';
import { byMonth, type EndShares } from '../traffic/flow/end-shares';
import type { FlowEnd, Use } from '../traffic/flow/offered';
import type { EndUse } from './end-uses';

/**
 * How often each end was really used, by month and hour of the clock: a wind record's peer. Observations are flights; an
 * end's arrivals are told as a share of all arrivals, its departures of all departures, and a circuit is one of each. An
 * hour in which flights only landed says nothing of departures: it takes its month's, and the other way round. Null
 * without flights that have times.
 */
export function flownShares(
  uses: readonly EndUse[],
  ends: readonly FlowEnd[],
  timeZone: string,
): { readonly shares: EndShares; readonly flights: number } | null {
  const timed = uses.flatMap(({ instant, ...use }) => (instant === null ? [] : [{ ...use, instant }]));
  if (timed.length === 0) return null;
  const array = () => new Float64Array(monthHours);
  const observations = array();
  const all: Record<Use, Float64Array> = { arrivals: array(), departures: array() };
  const counted = (['arrivals', 'departures'] as const).flatMap((use) =>
    ends.map((end) => ({ end, use, counts: array() })),
  );
  const add = (list: Float64Array, at: number) => void (list[at] = (list[at] ?? 0) + 1);
  for (const { runway, end, kind, instant } of timed) {
    const at = (monthAt(instant, timeZone) - 1) * 24 + Math.floor(minuteOfDay(instant, timeZone) / 60);
    add(observations, at);
    for (const use of usesOf[kind]) {
      add(all[use], at);
      for (const entry of counted)
        if (entry.use === use && entry.end.ref.runway === runway && entry.end.ref.end === end)
          add(entry.counts, at);
    }
  }
  for (const entry of counted) {
    const { use, counts } = entry;
    const [inMonth, ofMonth] = [byMonth(counts), byMonth(all[use])];
    entry.counts = counts.map((n, at) => {
      const of = all[use][at] ?? 0;
      const month = Math.floor(at / 24);
      const share = of > 0 ? n / of : (inMonth[month] ?? 0) / Math.max(1, ofMonth[month] ?? 0);
      return share * (observations[at] ?? 0);
    });
  }
  return {
    shares: {
      ends: counted.filter(({ counts }) => counts.some((n) => n > 0)),
      observations,
      undecided: array(),
    },
    flights: timed.length,
  };
}

const usesOf: Record<EndUse['kind'], readonly Use[]> = {
  arrival: ['arrivals'],
  departure: ['departures'],
  circuit: ['arrivals', 'departures'],
};
