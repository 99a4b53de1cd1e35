import { monthHours, type WindRecord } from '../../../survey/schema/wind-record';
import { cloudDirect } from '../../practice';

/** Shares of direct sun by cover, in the record's order. */
const direct = [1, cloudDirect.FEW, cloudDirect.SCT, cloudDirect.BKN, cloudDirect.OVC];
/** Observations that an hour or a month needs to speak for itself (design-2, section 10). */
const enough = 20;

interface Sum {
  readonly seen: number;
  readonly sun: number;
}
const none: Sum = { seen: 0, sun: 0 };
const sumOf = (counts: readonly number[]): Sum => ({
  seen: counts.reduce((a, b) => a + b, 0),
  sun: counts.reduce((a, n, k) => a + n * (direct[k] ?? 0), 0),
});
const plus = (a: Sum, b: Sum): Sum => ({ seen: a.seen + b.seen, sun: a.sun + b.sun });

/**
 * The mean share of direct sun, 0 to 1, in each month * 24 + hour of a record; an hour of few observations takes its
 * month's, a month of few the year's. Null where the record tells of no clouds.
 */
export function sunShares({ clouds }: Pick<WindRecord, 'clouds'>): Float64Array | null {
  if (!clouds) return null;
  const hours = clouds.map(sumOf);
  const year = hours.reduce(plus, none);
  if (year.seen === 0) return null;
  return Float64Array.from({ length: monthHours }, (_, at) => {
    const month = Math.floor(at / 24) * 24;
    const inMonth = hours.slice(month, month + 24).reduce(plus, none);
    const told = [hours[at] ?? none, inMonth].find(({ seen }) => seen >= enough) ?? year;
    return told.sun / told.seen;
  });
}
