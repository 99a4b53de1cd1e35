import type { Contents } from '../../survey/contents';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import type { Position } from '../../survey/document';
import { dayOf } from '../../time/local-time';
import type { Day } from '../../time/day-share';
import { verdictFor } from '../optics/verdict';
import { programmesOn } from '../plan/acts-due';
import { dayPlan, planRows, type PlanStay } from '../plan/day-plan';
import { isFlown, type FlowSpan } from '../plan/flow-spans';
import { worthwhileFrom } from '../practice';
import { lensToTake } from '../summary/spot-summary';
import { endName } from '../traffic/end-name';
import type { Wind } from '../traffic/wind/wind';
import { dayStepMinutes, type DayRow } from '../when/day-rows';
import { expectedFlows, type ExpectedFlows } from './expected-flows';
import { trafficKnown, type TrafficKnown } from './traffic-known';

/** Where to stand for a while. Plain values: it comes out of a worker. */
export interface FieldStay {
  readonly spot: string;
  readonly name: string;
  readonly position: Position;
  /** As people say it: "25 arrival". */
  readonly path: string;
  /** ms since 1970, UTC. */
  readonly from: number;
  readonly to: number;
  /** mm. */
  readonly focal: { readonly shortest: number; readonly longest: number } | null;
  /** Name of the lens to take. */
  readonly lens: string | null;
  /** Access has to be asked for, or is not known. */
  readonly checkFirst: boolean;
}

/** Why a field has no good minute on a day. */
export type Against = 'photography-forbidden' | 'no-spot' | 'no-end' | 'nobody-may-stand' | 'nothing-good';

/** One field on one day. */
export interface FieldDay {
  readonly date: string;
  readonly timeZone: string;
  readonly name: string;
  readonly position: Position;
  readonly flowFrom: ExpectedFlows['from'];
  /** Ends in use by name, the likeliest flow's first; share over its day, 0 to 1. */
  readonly flows: readonly { readonly ends: readonly string[]; readonly share: number }[];
  /** The ladder of the likeliest flow. */
  readonly stays: readonly FieldStay[];
  /** Good minutes where the ladder stands, each flow counted by how likely it is. */
  readonly goodMinutes: number;
  readonly against: Against | null;
  readonly traffic: TrafficKnown | null;
  /** Good minutes x movements per hour / 60; null while nobody knows the traffic. */
  readonly goodPasses: number | null;
}

export interface FieldAsked {
  readonly date: string;
  readonly wind: Wind | null;
  /** Movements per hour as typed, null for none. */
  readonly perHour: number | null;
}

/** Without a good minute there is no good pass, whatever flies; null while nobody knows the traffic. */
export const goodPasses = (minutes: number, traffic: TrafficKnown | null): number | null =>
  minutes === 0 ? 0 : traffic && (minutes * traffic.perHour) / 60;

const stepMs = dayStepMinutes * 60_000;

/**
 * What a field is worth on a day (design, part two, section 13): the day's ladder for each flow to be expected, and of
 * it the minutes in which some path that is flown has a picture of at least "fair", without glare and in sight. Heights
 * of a terrain are not asked: they are of the open survey only.
 */
export function fieldDay(contents: Contents, { date, wind, perHour }: FieldAsked): FieldDay {
  const { site, spots, rules, runways } = contents;
  const day = dayOf(date, site.timeZone);
  const expected = expectedFlows(contents, day, wind);
  const programmes = programmesOn(contents, date);
  const rows = planRows(
    contents,
    expected.flows.flatMap(({ spans }) => spans),
    day,
    null,
    programmes,
  );
  const flows = expected.flows
    .map(({ spans, share }) => {
      const { stays } = dayPlan(contents, rows, spans, day, [], programmes);
      return {
        spans,
        stays,
        minutes: goodMinutes(rows, spans, stays, day, share),
        share: meanShare(share, day),
      };
    })
    .sort((a, b) => b.share - a.share);
  const minutes = flows.reduce((sum, flow) => sum + flow.minutes, 0);
  const traffic = trafficKnown(contents, date, perHour);
  const named = flows.map(({ spans, share }) => ({ ends: endsOf(spans, runways), share }));
  const against = (): Against | null => {
    if (rules.photography === 'forbidden') return 'photography-forbidden';
    if (spots.length === 0) return 'no-spot';
    if (named.every(({ ends }) => ends.length === 0)) return 'no-end';
    if (rows.every(({ standing }) => standing === 'nobody')) return 'nobody-may-stand';
    return minutes === 0 ? 'nothing-good' : null;
  };
  return {
    date,
    timeZone: site.timeZone,
    name: site.name,
    position: site.reference,
    flowFrom: expected.from,
    flows: named,
    stays: (flows[0]?.stays ?? []).map((stay) => stayOf(stay, contents)),
    goodMinutes: minutes,
    against: against(),
    traffic,
    goodPasses: goodPasses(minutes, traffic),
  };
}

function goodMinutes(
  rows: readonly DayRow[],
  spans: readonly FlowSpan[],
  stays: readonly PlanStay[],
  day: Day,
  share: (instant: number) => number,
): number {
  let minutes = 0;
  for (const { window } of stays) {
    const here = rows.filter(({ spot }) => spot.id === window.row.spot.id);
    for (let instant = window.from + stepMs / 2; instant < window.to; instant += stepMs) {
      const step = Math.floor((instant - day.from) / stepMs);
      const good = here.some((row) => isGood(row, step) && isFlown(spans, row.path.ref, instant));
      if (good) minutes += dayStepMinutes * share(instant);
    }
  }
  return minutes;
}

const isGood = ({ light, shut }: DayRow, step: number): boolean =>
  (light.total[step] ?? 0) >= worthwhileFrom &&
  light.glare[step] === 0 &&
  light.blocked[step] === 0 &&
  shut?.[step] !== 1;

function meanShare(share: (instant: number) => number, { from, to }: Day): number {
  let [sum, n] = [0, 0];
  for (let at = from + stepMs; at < to; at += 12 * stepMs, n++) sum += share(at);
  return n === 0 ? 0 : sum / n;
}

function endsOf(spans: readonly FlowSpan[], runways: Contents['runways']): readonly string[] {
  const names = spans.flatMap(({ arrivals, departures }) =>
    [...arrivals, ...departures].flatMap(({ runway: id, end }) => {
      const runway = runways.find((r) => r.id === id);
      return runway ? [endName(runway, end)] : [];
    }),
  );
  return [...new Set(names)];
}

function stayOf({ window }: PlanStay, { kit, body }: Contents): FieldStay {
  const { row, from, to, focal, best } = window;
  const spot: StandingSpot = row.spot;
  const { focalLength } = best;
  const verdict =
    focalLength === null
      ? null
      : lensToTake(
          kit.lenses.map((lens) => verdictFor(lens, focalLength, body, kit.fill)),
          kit.fill,
        );
  return {
    spot: spot.id,
    name: spot.name,
    position: spot.position,
    path: row.path.name,
    from,
    to,
    focal,
    lens: verdict?.lens.name ?? null,
    checkFirst: row.standing === 'check-first',
  };
}
