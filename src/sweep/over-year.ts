import type { Contents } from '../survey/contents';
import type { Position } from '../survey/document';
import type { StandingSpot } from '../survey/schema/standing-spot';
import { openInstants } from '../figures/access/open-instants';
import { mayStand } from '../figures/access/may-stand';
import { alwaysClear, clearSky, type SkyAt } from '../figures/light/sky';
import { outlookOf } from '../figures/outlook';
import type { ElevationGrid } from '../figures/sight/terrain';
import { pastFlows, toldOf, type PastTold, type PastUse } from '../figures/flown/past-use';
import type { FlowShares } from '../figures/traffic/flow/flow-shares';
import { sunShares } from '../figures/traffic/flow/sun-shares';
import { pathsOf, type Path } from '../figures/traffic/paths';
import { dateAt, dayOf, minuteOfDay } from '../time/local-time';
import { instantsWithin } from './instants';
import { Kernel } from './kernel/kernel';

/** A place, and m above mean sea level of the eye there. `spot`: of the survey, whose access counts. */
export interface EyePlace {
  readonly position: Position;
  readonly eye: number;
  readonly spot?: StandingSpot | null;
}

export interface OverYear {
  /** For each place the good minutes that a visit of the whole day can expect, month by month. */
  readonly minutes: readonly (readonly number[])[];
  /** The same by month x 24 + hour of the site's clock. */
  readonly byHour: readonly (readonly number[])[];
  /** Months that were too thin, so that the year's shares stand in; hours for which the month's do. */
  readonly thinMonths: readonly number[];
  readonly thinHours: number;
  /** Whether past clouds went in; else every sky is taken for clear, which is to be said. */
  readonly cloud: boolean;
  /** What the shares of ends come from. */
  readonly from: PastTold;
}

/** Observations under which shares are not to be trusted. */
const fewest = 20;
/** The day that stands for its month. */
const dayOfMonth = 21;

/** No direct sun at all. */
const overcast: SkyAt = () => ({ ...clearSky, direct: 0 });

/**
 * Expected good minutes by month: over hours and flows the share of the flow times the minutes in that hour at which some
 * path of it is good on the 21st and one may be there. They are computed at full sun and without any, and mixed by the record's
 * mean share of direct sun in that hour; where nothing tells of clouds the sky is clear. `step`: s.
 */
export function overYear(
  contents: Contents,
  past: PastUse,
  places: readonly EyePlace[],
  at: number,
  step: number,
  terrain: ElevationGrid | null,
): OverYear {
  const zone = contents.site.timeZone;
  const year = dateAt(at, zone).slice(0, 4);
  const shares = pastFlows(past);
  const sun = past.record && sunShares(past.record);
  const paths = pathsOf(contents, (kind) => kind === 'arrival' || kind === 'departure', terrain);
  const shareOf = sharer(shares);
  const outlook = outlookOf(contents, terrain);
  const flows = shares.flows.map((flow) => paths.flatMap((path, p) => (isOf(flow, path) ? [p] : [])));
  const minutes = places.map(() => new Array<number>(12).fill(0));
  const byHour = places.map(() => new Array<number>(12 * 24).fill(0));
  for (let month = 0; month < 12; month++) {
    const day = dayOf(`${year}-${`${month + 1}`.padStart(2, '0')}-${dayOfMonth}`, zone);
    const instants = instantsWithin(day, step);
    const hourOf = (clock: string) => instants.map((instant) => Math.floor(minuteOfDay(instant, clock) / 60));
    const hours = hourOf(zone);
    const recorded = hourOf(past.timeZone);
    const open = places.map(({ spot }) => opensOn(contents, spot ?? null, instants));
    const skies = sun ? ([alwaysClear, overcast] as const) : ([alwaysClear] as const);
    for (const skyAt of skies) {
      const kernel = new Kernel({
        paths,
        outlook: { ...outlook, skyAt },
        instants,
        middle: contents.site.reference,
        everyInstant: false,
      });
      const isGood = (p: number, t: number) => kernel.good[p * instants.length + t] === 1;
      places.forEach(({ position, eye }, i) => {
        kernel.at(position, eye);
        const mine = byHour[i] as number[];
        instants.forEach((_, t) => {
          if (open[i]?.[t] !== 1) return;
          const hour = recorded[t] as number;
          const direct = sun ? (sun[month * 24 + hour] as number) : 1;
          const often = skyAt === overcast ? 1 - direct : direct;
          const into = month * 24 + (hours[t] as number);
          flows.forEach((own, f) => {
            if (own.some((p) => isGood(p, t)))
              mine[into] = (mine[into] as number) + (often * shareOf(f, month, hour) * step) / 60;
          });
        });
      });
    }
    minutes.forEach((months, i) => {
      months[month] = (byHour[i] ?? []).slice(month * 24, month * 24 + 24).reduce((a, b) => a + b, 0);
    });
  }
  return { minutes, byHour, cloud: sun !== null, from: toldOf(past), ...thin(shares) };
}

/** When one may be at a place: never where a spot is forbidden that day, else by its own hours or the field's. */
function opensOn(
  { site, rules }: Contents,
  spot: StandingSpot | null,
  instants: readonly number[],
): Uint8Array {
  const position = spot?.position ?? site.reference;
  const noon = instants[instants.length >> 1];
  if (spot && noon !== undefined && mayStand(spot, { site, rules }, noon).status === 'forbidden')
    return new Uint8Array(instants.length);
  return openInstants(spot?.access.hours ?? rules.hours, instants, { position, timeZone: site.timeZone });
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
