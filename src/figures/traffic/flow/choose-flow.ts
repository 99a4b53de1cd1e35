import type { EndRef } from '../../../survey/schema/site';
import type { Configuration } from '../../../survey/schema/site';
import { calmBelowKt, headwindTieKt } from '../../practice';
import { windComponents } from '../wind/components';
import { strongest, type Wind } from '../wind/wind';
import { readHours, withinHours } from './hours';
import type { FlowEnd, Use } from './offered';

/** What decides besides the wind: the ends, and the survey's configurations in order of preference. */
export interface FlowRules {
  readonly ends: readonly FlowEnd[];
  readonly configurations: readonly Configuration[];
  /** Index of the one for calm or variable wind, null for none. */
  readonly calm: number | null;
}

export interface FlowChoice {
  readonly arrivals: readonly EndRef[];
  readonly departures: readonly EndRef[];
  /** Index of the configuration chosen; null when the headwind alone decided. */
  readonly configuration: number | null;
  /** Why, in plain words. */
  readonly reason: string;
}

type Ends = Readonly<Record<Use, readonly FlowEnd[]>>;
const uses = ['arrivals', 'departures'] as const;

/** Rounding of a sum of degrees and knots: a limit that is met exactly holds. */
const rounding = 1e-9;
const kt = (speed: number): string => `${Number(speed.toFixed(1))} kt`;

/**
 * Which ends serve arrivals and departures in a wind (true) at a minute of the site's day: design, section 3, Flow.
 * Under 5 kt or in variable wind the calm-wind configuration (FAA JO 7110.65 3-5-1); else the first whose tailwind
 * and crosswind limits hold at the gusts' speed (ICAO Doc 4444 7.2.6); else the ends with the most headwind.
 */
export function chooseFlow(rules: FlowRules, wind: Wind, minuteOfDay: number): FlowChoice {
  const { configurations, ends } = rules;
  const against = configurations.map((c) => passedOver(c, ends, minuteOfDay));
  const answer = (index: number, why: string): FlowChoice => {
    const configuration = configurations[index] as Configuration;
    const chosen = servedBy(configuration, ends);
    const reasons = [why, ...missing(configuration, ends), ...unreadHours(configuration)];
    return { ...refs(chosen), configuration: index, reason: reasons.join('; ') };
  };
  const name = (index: number) => `"${configurations[index]?.name || `Configuration ${index + 1}`}"`;
  const calm = wind.speedKt < calmBelowKt;
  const skipped: string[] = [];

  if (rules.calm !== null && (calm || wind.from === null)) {
    const why = against[rules.calm];
    if (!why) return answer(rules.calm, `${weak(wind)}: ${name(rules.calm)} is named for it`);
    skipped.push(`${name(rules.calm)} is passed over: ${why}`);
  }
  for (const [i, configuration] of configurations.entries()) {
    if (i === rules.calm && skipped.length > 0 && against[i]) continue;
    const why = against[i] ?? beyondLimits(configuration, servedBy(configuration, ends), wind);
    if (why) {
      skipped.push(`${name(i)} is passed over: ${why}`);
      continue;
    }
    const limits = `tailwind up to ${kt(configuration.maxTailwindKt)}, crosswind up to ${kt(configuration.maxCrosswindKt)}`;
    const first = `${name(i)} is the first whose limits hold (${limits}${wind.gustKt === null ? '' : ', gusts included'})`;
    return answer(i, [first, ...skipped].join('; '));
  }
  const preferred = wind.from === null && wind.speedKt > 0 ? against.indexOf(null) : -1;
  if (preferred !== -1) {
    const why = `${weak(wind)}: no limits can be checked against it, so ${name(preferred)} stands, the first of the survey`;
    return answer(preferred, why);
  }
  return mostHeadwind(rules, wind, skipped);
}

const weak = (wind: Wind): string =>
  wind.speedKt === 0
    ? 'The wind is calm'
    : wind.from === null
      ? `The wind is variable at ${kt(wind.speedKt)}`
      : `${kt(wind.speedKt)} of wind count as calm (under ${calmBelowKt} kt)`;

const refs = (ends: Ends) => ({
  arrivals: ends.arrivals.map((e) => e.ref),
  departures: ends.departures.map((e) => e.ref),
});

const has = (list: readonly EndRef[], { ref }: FlowEnd) =>
  list.some((e) => e.runway === ref.runway && e.end === ref.end);

/** The ends that a configuration names and that may be used, in the order of runways and ends. */
function servedBy(configuration: Configuration, ends: readonly FlowEnd[]): Ends {
  const served = (use: Use) => ends.filter((e) => has(configuration[use], e) && e.against[use] === null);
  return { arrivals: served('arrivals'), departures: served('departures') };
}

/** What a configuration names and cannot be used, in words. */
const missing = (configuration: Configuration, ends: readonly FlowEnd[]): string[] => [
  ...new Set(
    uses.flatMap((use) =>
      ends.flatMap((e) => (has(configuration[use], e) ? [e.against[use]].filter((w) => w !== null) : [])),
    ),
  ),
];

const unreadHours = ({ hours }: Configuration): string[] =>
  readHours(hours) === null ? [`its hours "${hours}" cannot be read and do not count`] : [];

/** Why a configuration cannot be used whatever the wind, or null. */
function passedOver(
  configuration: Configuration,
  ends: readonly FlowEnd[],
  minuteOfDay: number,
): string | null {
  if (!withinHours(readHours(configuration.hours) ?? [], minuteOfDay))
    return `its hours are ${configuration.hours}`;
  const served = servedBy(configuration, ends);
  const empty = uses.filter((use) => served[use].length === 0 && configuration[use].length > 0);
  if (configuration.arrivals.length + configuration.departures.length === 0) return 'it names no ends';
  if (empty.length === 0) return null;
  return missing(configuration, ends).join(', ') || 'its ends are not there';
}

/** Which limit the wind breaks on which end, or null. A wind without direction may come from anywhere. */
function beyondLimits(
  { maxTailwindKt, maxCrosswindKt }: Configuration,
  { arrivals, departures }: Ends,
  wind: Wind,
): string | null {
  const speed = strongest(wind);
  const gusts = wind.gustKt === null ? '' : ' in the gusts';
  for (const { name, bearingDeg } of new Set([...arrivals, ...departures])) {
    const parts = windComponents(wind.from, speed, bearingDeg);
    const tailwind = parts ? -parts.headwindKt : speed;
    const crosswind = parts ? Math.abs(parts.crosswindKt) : speed;
    const could = parts ? 'has' : 'could have';
    if (tailwind > maxTailwindKt + rounding)
      return `${name} ${could} ${kt(tailwind)} of tailwind${gusts}, more than ${kt(maxTailwindKt)}`;
    if (crosswind > maxCrosswindKt + rounding)
      return `${name} ${could} ${kt(crosswind)} of crosswind${gusts}, more than ${kt(maxCrosswindKt)}`;
  }
  return null;
}

/** The ends that face the wind best; all that can be used where the wind has no direction. */
function mostHeadwind({ ends, configurations }: FlowRules, wind: Wind, skipped: string[]): FlowChoice {
  const headwind = (e: FlowEnd) => windComponents(wind.from, wind.speedKt, e.bearingDeg)?.headwindKt ?? 0;
  const best = (use: Use) => {
    const open = ends.filter((e) => e.against[use] === null);
    const most = Math.max(...open.map(headwind));
    return open.filter((e) => headwind(e) >= most - headwindTieKt);
  };
  const chosen = { arrivals: best('arrivals'), departures: best('departures') };
  return {
    ...refs(chosen),
    configuration: null,
    reason: [
      ...noneHolds(configurations, chosen, wind),
      headwindWords(chosen, headwind, wind, ends),
      ...unnamed(configurations, skipped),
    ].join('; '),
  };
}

/** Ends that the survey's own limits speak against must not be read as recommended. */
const noneHolds = (configurations: readonly Configuration[], chosen: Ends, { from }: Wind): string[] => {
  if (configurations.length === 0) return [];
  if (from === null || uses.every((use) => chosen[use].length === 0)) return ['No configuration holds'];
  return ['No configuration is within its limits: the ends named are by headwind alone, to be checked'];
};

const unnamed = (configurations: readonly Configuration[], skipped: string[]): string[] =>
  configurations.length === 0 ? ['the survey names no flow configurations'] : skipped;

function headwindWords(
  { arrivals, departures }: Ends,
  headwind: (e: FlowEnd) => number,
  wind: Wind,
  ends: readonly FlowEnd[],
): string {
  if (ends.length === 0) return 'The survey has no runway';
  const both = [...new Set([...arrivals, ...departures])];
  const leader = both[0];
  const closed = [...new Set(ends.flatMap((e) => uses.map((use) => e.against[use])))].filter(
    (w) => w !== null,
  );
  if (!leader) return `No end can be used: ${closed.join(', ')}`;
  const left = closed.map((why) => `; ${why}`).join('');
  if (wind.from === null) return `${weak(wind)}: it prefers no end${left}`;
  const names = (list: readonly FlowEnd[]) =>
    list.map((e) => `${e.name} (${kt(headwind(e))})`).join(' and ') || 'none';
  const alike = arrivals.length === departures.length && arrivals.every((e, i) => e === departures[i]);
  const best = alike ? names(both) : `${names(arrivals)} for arrivals, ${names(departures)} for departures`;
  const light = wind.speedKt < calmBelowKt ? `; ${weak(wind)}, so any end may be used` : '';
  return `Most headwind: ${best}${light}${left}`;
}
