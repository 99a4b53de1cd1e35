import { monthHours } from '../../survey/schema/wind-record';
import type { EndRef } from '../../survey/schema/site';
import { byMonth, type EndShare, type EndShares } from '../traffic/flow/end-shares';
import type { FlowShare, FlowShares } from '../traffic/flow/flow-shares';
import type { Use } from '../traffic/flow/offered';

type Shares = readonly { readonly ref: EndRef; readonly share: number }[];

/**
 * Ends that were in use together, out of shares of single ends which do not say so: as often as they can, they land and
 * leave at one and the same end; what is left over goes together in proportion. What each end's share is stays so. An hour
 * in which nobody was seen to leave takes its month's departures, else they leave as they land; and the other way round.
 */
export function flowsOfEnds({ ends, observations }: EndShares): FlowShares {
  const flows = new Map<string, FlowShare>();
  const count = (arrivals: readonly EndRef[], departures: readonly EndRef[], at: number, n: number) => {
    if (n <= 0) return;
    const key = JSON.stringify([arrivals, departures]);
    let flow = flows.get(key);
    if (!flow) flows.set(key, (flow = { arrivals, departures, counts: new Float64Array(monthHours) }));
    flow.counts[at] = (flow.counts[at] as number) + n;
  };
  for (let at = 0; at < monthHours; at++) {
    const seen = observations[at] as number;
    if (seen === 0) continue;
    const [landed, left] = [sharesAt(ends, 'arrivals', at), sharesAt(ends, 'departures', at)];
    const arrivals = landed.length > 0 ? landed : left;
    const departures = left.length > 0 ? left : landed;
    for (const { a, d, share } of coupled(arrivals, departures)) count([a], [d], at, share * seen);
  }
  return { flows: [...flows.values()], observations };
}

/** Of an hour, else of its month; empty where the month has none either. They come to one. */
function sharesAt(ends: readonly EndShare[], use: Use, at: number): Shares {
  const own = ends.filter((e) => e.use === use);
  const month = Math.floor(at / 24);
  const inHour = own.map(({ end: { ref }, counts }) => ({ ref, n: counts[at] as number }));
  const inMonth = own.map(({ end: { ref }, counts }) => ({ ref, n: byMonth(counts)[month] as number }));
  const counts = inHour.some(({ n }) => n > 0) ? inHour : inMonth;
  const all = counts.reduce((sum, { n }) => sum + n, 0);
  return all === 0 ? [] : counts.filter(({ n }) => n > 0).map(({ ref, n }) => ({ ref, share: n / all }));
}

const isSame = (a: EndRef, b: EndRef) => a.runway === b.runway && a.end === b.end;

function coupled(arrivals: Shares, departures: Shares) {
  const of = (shares: Shares, ref: EndRef) => shares.find((s) => isSame(s.ref, ref))?.share ?? 0;
  const same = arrivals.map(({ ref, share }) => ({
    a: ref,
    d: ref,
    share: Math.min(share, of(departures, ref)),
  }));
  const left = 1 - same.reduce((sum, { share }) => sum + share, 0);
  const rest = (shares: Shares, others: Shares) =>
    shares.map(({ ref, share }) => ({ ref, share: Math.max(0, share - of(others, ref)) }));
  if (left < 1e-12) return same;
  return [
    ...same,
    ...rest(arrivals, departures).flatMap(({ ref: a, share: p }) =>
      rest(departures, arrivals).map(({ ref: d, share: q }) => ({ a, d, share: (p * q) / left })),
    ),
  ];
}
