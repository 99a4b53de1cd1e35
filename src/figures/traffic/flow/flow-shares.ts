import { monthHours, type WindRecord } from '../../../survey/schema/wind-record';
import type { EndRef } from '../../../survey/schema/site';
import type { FlowRules } from './choose-flow';
import { choices } from './end-shares';

/** Ends that were in use together, and how often, by month * 24 + hour of the clock. */
export interface FlowShare {
  readonly arrivals: readonly EndRef[];
  readonly departures: readonly EndRef[];
  readonly counts: Float64Array;
}

export interface FlowShares {
  readonly flows: readonly FlowShare[];
  /** All observations. */
  readonly observations: Float64Array;
}

/** The flows that the winds of a record would have made. A wind that leaves either end counts for each of them in part. */
export function flowShares(rules: FlowRules, record: WindRecord): FlowShares {
  const observations = new Float64Array(monthHours);
  const flows = new Map<string, FlowShare>();
  const choose = choices(rules, record);
  const count = (arrivals: readonly EndRef[], departures: readonly EndRef[], at: number, n: number) => {
    const key = JSON.stringify([arrivals, departures]);
    let flow = flows.get(key);
    if (!flow) flows.set(key, (flow = { arrivals, departures, counts: new Float64Array(monthHours) }));
    flow.counts[at] = (flow.counts[at] as number) + n;
  };
  record.counts.forEach((list, at) => {
    for (let i = 0; i < list.length; i += 2) {
      const [cell = 0, n = 0] = [list[i], list[i + 1]];
      observations[at] = (observations[at] as number) + n;
      const { choice, wind } = choose(cell, at % 24);
      const { arrivals, departures } = choice;
      if (choice.configuration !== null || !(choice.either || wind.from === null)) {
        count(arrivals, departures, at, n);
        continue;
      }
      const ends = [...arrivals, ...departures.filter((d) => !has(arrivals, d))];
      for (const end of ends)
        count(has(arrivals, end) ? [end] : [], has(departures, end) ? [end] : [], at, n / ends.length);
    }
  });
  return { flows: [...flows.values()], observations };
}

const has = (list: readonly EndRef[], end: EndRef) =>
  list.some((e) => e.runway === end.runway && e.end === end.end);
