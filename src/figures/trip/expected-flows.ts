import type { Contents } from '../../survey/contents';
import type { Day } from '../../time/day-share';
import { minuteOfDay, monthAt } from '../../time/local-time';
import { endUses } from '../flown/end-uses';
import { pastFlows, pastUse } from '../flown/past-use';
import type { FlowSpan } from '../plan/flow-spans';
import { chooseFlow } from '../traffic/flow/choose-flow';
import { flowRules } from '../traffic/flow/flow-for';
import { flowHours } from '../traffic/flow/flow-hours';
import { inUse } from '../traffic/in-use';
import type { Wind } from '../traffic/wind/wind';
import { fewestObservations } from './practice';

/** One way in which a day may be flown. */
export interface ExpectedFlow {
  readonly spans: readonly FlowSpan[];
  /** How likely it is at an instant, 0 to 1. */
  readonly share: (instant: number) => number;
}

export interface ExpectedFlows {
  readonly flows: readonly ExpectedFlow[];
  /** What the ends are taken from. */
  readonly from: 'typed-wind' | 'forecast' | 'flights' | 'record' | 'survey' | 'assumed';
}

const hour = 3_600_000;
const always = () => 1;

/**
 * The ends to be expected at a field through a day: by a typed wind, else by its forecast where that covers some of the
 * day, else by what its recorded flights and its past winds say of that month, else as its survey says, else the longest runway.
 */
export function expectedFlows(contents: Contents, day: Day, typed: Wind | null): ExpectedFlows {
  const rules = flowRules(contents);
  const { timeZone } = contents.site;
  if (typed) {
    const spans: FlowSpan[] = [];
    // Hour by hour: configurations may have hours.
    for (let from = day.from; from < day.to; from += hour) {
      const { arrivals, departures } = chooseFlow(rules, typed, minuteOfDay(from, timeZone));
      spans.push({ from, to: Math.min(from + hour, day.to), arrivals, departures });
    }
    return { flows: [{ spans, share: always }], from: 'typed-wind' };
  }
  const stated = inUse(contents, 0);
  const { arrivals, departures } = stated;
  const forecast = contents.weather?.forecastTo ? flowHours(contents, contents.weather) : [];
  const covered = forecast
    .filter(({ from, to }) => to > day.from && from < day.to)
    .map(({ from, to, choice }) => ({ from, to, arrivals: choice.arrivals, departures: choice.departures }));
  const [first, last] = [covered[0], covered.at(-1)];
  if (first && last) {
    const before = { from: day.from, to: first.from, arrivals, departures };
    const after = { from: last.to, to: day.to, arrivals, departures };
    return { flows: [{ spans: [before, ...covered, after], share: always }], from: 'forecast' };
  }
  return (
    byPast(contents, day) ?? {
      flows: [{ spans: [{ ...day, arrivals, departures }], share: always }],
      from: stated.stated ? 'survey' : 'assumed',
    }
  );
}

/** By the shares of each flow in that month, hour by hour; an hour that was seldom observed takes its month's. */
function byPast(contents: Contents, day: Day): ExpectedFlows | null {
  const { site } = contents;
  const past = pastUse(contents, contents.windRecord, endUses(contents, null));
  if (!past) return null;
  const { flows, observations } = pastFlows(past);
  const first = (monthAt((day.from + day.to) / 2, site.timeZone) - 1) * 24;
  const month = (counts: Float64Array) => counts.subarray(first, first + 24).reduce((sum, n) => sum + n, 0);
  if (month(observations) < fewestObservations) return null;
  const at = (instant: number) => first + Math.floor(minuteOfDay(instant, past.timeZone) / 60);
  return {
    from: past.months[first / 24] === 'flights' ? 'flights' : 'record',
    flows: flows
      .filter(({ counts }) => month(counts) > 0)
      .map(({ arrivals, departures, counts }) => ({
        spans: [{ ...day, arrivals, departures }],
        share: (instant) => {
          const seen = observations[at(instant)] as number;
          return seen >= fewestObservations
            ? (counts[at(instant)] as number) / seen
            : month(counts) / month(observations);
        },
      })),
  };
}
