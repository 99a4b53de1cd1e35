import type { Contents } from '../survey/contents';
import type { Position } from '../survey/document';
import type { WindRecord } from '../survey/schema/wind-record';
import { alwaysClear } from '../figures/light/sky';
import { outlookOf } from '../figures/outlook';
import type { ElevationGrid } from '../figures/sight/terrain';
import { flowRules } from '../figures/traffic/flow/flow-for';
import { flowShares, type FlowShares } from '../figures/traffic/flow/flow-shares';
import { pathsOf, type Path } from '../figures/traffic/paths';
import { dateAt, dayOf, isTimeZone, minuteOfDay } from '../time/local-time';
import { instantsWithin } from './instants';
import { Kernel } from './kernel';

/** A place, and m above mean sea level of the eye there. */
export interface EyePlace {
  readonly position: Position;
  readonly eye: number;
}

export interface OverYear {
  /** For each place the good minutes that a visit of the whole day can expect, month by month. */
  readonly minutes: readonly (readonly number[])[];
  /** The same by month x 24 + hour of the site's clock. */
  readonly byHour: readonly (readonly number[])[];
  /** Months of the record that were too thin, so that the year's shares stand in; hours for which the month's do. */
  readonly thinMonths: readonly number[];
  readonly thinHours: number;
}

/** Observations under which shares are not to be trusted. */
const fewest = 20;
/** The day that stands for its month. */
const dayOfMonth = 21;

/**
 * Expected good minutes by month: over hours and flows the share of the flow times the minutes in that hour at which some
 * path of it is good on the 21st, under a clear sky. `step`: s.
 */
export function overYear(
  contents: Contents,
  record: WindRecord,
  places: readonly EyePlace[],
  at: number,
  step: number,
  terrain: ElevationGrid | null,
): OverYear {
  const zone = isTimeZone(contents.site.timeZone) ? contents.site.timeZone : 'UTC';
  const year = dateAt(at, zone).slice(0, 4);
  const shares = flowShares(flowRules(contents), record);
  const paths = pathsOf(contents, (kind) => kind === 'arrival' || kind === 'departure');
  const shareOf = sharer(shares);
  const outlook = { ...outlookOf(contents, terrain), skyAt: alwaysClear };
  const pathsIn = shares.flows.map((flow) => paths.flatMap((path, p) => (isOf(flow, path) ? [p] : [])));
  const minutes = places.map(() => new Array<number>(12).fill(0));
  const byHour = places.map(() => new Array<number>(12 * 24).fill(0));
  for (let month = 0; month < 12; month++) {
    const day = dayOf(`${year}-${`${month + 1}`.padStart(2, '0')}-${dayOfMonth}`, zone);
    const instants = instantsWithin(day, step);
    const hours = instants.map((instant) => Math.floor(minuteOfDay(instant, zone) / 60));
    const kernel = new Kernel({ paths, outlook, instants, middle: contents.site.reference });
    places.forEach(({ position, eye }, i) => {
      kernel.at(position, eye);
      let sum = 0;
      shares.flows.forEach((_, f) => {
        const mine = pathsIn[f] ?? [];
        for (let t = 0; t < instants.length; t++)
          if (mine.some((p) => kernel.good[p * instants.length + t] === 1)) {
            const hour = hours[t] as number;
            const expected = (shareOf(f, month, hour) * step) / 60;
            sum += expected;
            const at = month * 24 + hour;
            (byHour[i] as number[])[at] = (byHour[i]?.[at] ?? 0) + expected;
          }
      });
      (minutes[i] as number[])[month] = sum;
    });
  }
  return { minutes, byHour, ...thin(shares) };
}

const isOf = (flow: FlowShares['flows'][number], { ref }: Path): boolean =>
  (ref.kind === 'arrival' ? flow.arrivals : flow.departures).some(
    (e) => e.runway === ref.runway && e.end === ref.end,
  );

const sumOf = (list: Float64Array, from: number, to: number): number =>
  list.subarray(from, to).reduce((sum, n) => sum + n, 0);

/** Share of a flow in an hour; that of its month where the hour has too few observations, of the year where the month has. */
function sharer({ flows, observations }: FlowShares) {
  return (f: number, month: number, hour: number): number => {
    const { counts } = flows[f] as FlowShares['flows'][number];
    const spans = [
      [month * 24 + hour, month * 24 + hour + 1],
      [month * 24, month * 24 + 24],
      [0, observations.length],
    ] as const;
    for (const [from, to] of spans) {
      const seen = sumOf(observations, from, to);
      if (seen >= fewest || to - from === observations.length)
        return seen > 0 ? sumOf(counts, from, to) / seen : 0;
    }
    return 0;
  };
}

function thin({ observations }: FlowShares) {
  const months = Array.from({ length: 12 }, (_, m) => sumOf(observations, m * 24, m * 24 + 24));
  return {
    thinMonths: months.flatMap((n, m) => (n < fewest ? [m + 1] : [])),
    thinHours: observations.filter((n) => n < fewest).length,
  };
}
