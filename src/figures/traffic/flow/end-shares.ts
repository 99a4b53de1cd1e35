import type { EndRef } from '../../../survey/schema/site';
import {
  directions,
  monthHours,
  variableDirection,
  type WindRecord,
} from '../../../survey/schema/wind-record';
import type { Wind } from '../wind/wind';
import { chooseFlow, type FlowChoice, type FlowRules } from './choose-flow';
import type { FlowEnd, Use } from './offered';

/** How often an end was in use, by month * 24 + hour of the clock. */
export interface EndShare {
  readonly end: FlowEnd;
  readonly use: Use;
  /** Observations with this end in use. */
  readonly counts: Float64Array;
}

export interface EndShares {
  /** Ends that were in use at all, in the order of runways and ends, arrivals first. */
  readonly ends: readonly EndShare[];
  /** All observations. */
  readonly observations: Float64Array;
  /** Those whose wind leaves either end, and for which the survey names no flow: they count for no end. */
  readonly undecided: Float64Array;
}

/** The wind that stands for a cell of a record. */
function windOf(record: WindRecord, cell: number): Wind {
  if (cell === 0) return { from: null, speedKt: 0, gustKt: null, varies: null };
  const [k, direction] = [Math.floor((cell - 1) / directions), (cell - 1) % directions];
  const { meanKt, strongestKt } = record.classes[k] ?? { meanKt: 0, strongestKt: 0 };
  return {
    from: direction === variableDirection ? null : direction * 10 || 360,
    speedKt: meanKt,
    gustKt: strongestKt > meanKt ? strongestKt : null,
    varies: null,
  };
}

/** Which ends the winds of a record would have put in use under the survey's flow, by month and hour. */
export function endShares(rules: FlowRules, record: WindRecord): EndShares {
  const observations = new Float64Array(monthHours);
  const undecided = new Float64Array(monthHours);
  const counted = (['arrivals', 'departures'] as const).flatMap((use) =>
    rules.ends.map((end) => ({ end, use, counts: new Float64Array(monthHours) })),
  );
  const choose = choices(rules, record);
  record.counts.forEach((list, at) => {
    for (let i = 0; i < list.length; i += 2) {
      const [cell = 0, count = 0] = [list[i], list[i + 1]];
      observations[at] = (observations[at] ?? 0) + count;
      const { choice, wind } = choose(cell, at % 24);
      if (choice.configuration === null && (choice.either || wind.from === null)) {
        undecided[at] = (undecided[at] ?? 0) + count;
        continue;
      }
      for (const { end, use, counts } of counted)
        if (has(choice[use], end)) counts[at] = (counts[at] ?? 0) + count;
    }
  });
  return { ends: counted.filter(({ counts }) => counts.some((n) => n > 0)), observations, undecided };
}

const has = (refs: readonly EndRef[], { ref }: FlowEnd) =>
  refs.some((r) => r.runway === ref.runway && r.end === ref.end);

/** The flow for a cell in an hour, worked out once; the hour counts only where a configuration has hours. */
function choices(rules: FlowRules, record: WindRecord) {
  const timed = rules.configurations.some((c) => c.hours !== null);
  const known = new Map<number, { readonly choice: FlowChoice; readonly wind: Wind }>();
  return (cell: number, hour: number) => {
    const key = timed ? cell * 24 + hour : cell;
    let answer = known.get(key);
    if (!answer) {
      const wind = windOf(record, cell);
      answer = { wind, choice: chooseFlow(rules, wind, hour * 60 + 30) };
      known.set(key, answer);
    }
    return answer;
  };
}

/** Shares of the observations in each month * 24 + hour, null where there are none. */
export const sharesOf = (counts: Float64Array, observations: Float64Array): (number | null)[] =>
  Array.from(counts, (n, i) => ((observations[i] ?? 0) > 0 ? n / (observations[i] ?? 1) : null));

/** Sums over the hours of each month. */
export const byMonth = (values: Float64Array): number[] =>
  Array.from({ length: 12 }, (_, month) =>
    values.subarray(month * 24, month * 24 + 24).reduce((sum, n) => sum + n, 0),
  );

/**
 * Hours of front light that can be expected in each month, of a path whose share of front light in each hour (0 to 1)
 * is `frontLit` and whose end is in use for the share `inUse` of it; null in a month without observations. Hours of
 * the clock without any take the month's share. `days`: of each month.
 */
export function expectedHours(
  frontLit: Float64Array,
  { counts }: Pick<EndShare, 'counts'>,
  observations: Float64Array,
  days: readonly number[],
): (number | null)[] {
  const [used, all] = [byMonth(counts), byMonth(observations)];
  return days.map((count, month) => {
    const [inMonth = 0, of = 0] = [used[month], all[month]];
    if (of === 0) return null;
    let hours = 0;
    for (let hour = 0; hour < 24; hour++) {
      const at = month * 24 + hour;
      const seen = observations[at] ?? 0;
      const share = seen > 0 ? (counts[at] ?? 0) / seen : inMonth / of;
      hours += share * (frontLit[at] ?? 0);
    }
    return hours * count;
  });
}
