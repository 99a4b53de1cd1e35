import type { EndRef } from '../../../survey/schema/site';
import type { Configuration } from '../../../survey/schema/site';
import { calmBelowKt } from '../../practice';
import { windComponents } from '../wind/components';
import { strongest, type Wind } from '../wind/wind';
import { readHours, withinHours } from './hours';
import type { FlowEnd, Use } from './offered';
import { lightRunways, runwayInUse } from './runway-in-use';
import { kt, weak } from './wind-words';

/** What decides besides the wind: the ends, and the survey's configurations in order of preference. */
export interface FlowRules {
  readonly ends: readonly FlowEnd[];
  readonly configurations: readonly Configuration[];
  /** Index of the one for calm or variable wind, null for none. */
  readonly calm: number | null;
  /** Whether the subject is a light aircraft. */
  readonly light: boolean;
}

export interface FlowChoice {
  readonly arrivals: readonly EndRef[];
  readonly departures: readonly EndRef[];
  /** Whether both ends of the runway in use are as good: no wind to speak of, or straight across. */
  readonly either: boolean;
  /** Ids of the runways that are for light aircraft beside the longest. */
  readonly light: readonly string[];
  /** Index of the configuration chosen; null when wind and runways alone decided. */
  readonly configuration: number | null;
  /** Why, in plain words. */
  readonly reason: string;
}

type Ends = Readonly<Record<Use, readonly FlowEnd[]>>;
const uses = ['arrivals', 'departures'] as const;

/** Rounding of a sum of degrees and knots: a limit that is met exactly holds. */
const rounding = 1e-9;

/**
 * Which ends serve arrivals and departures in a wind (true) at a minute of the site's day: design, section 3, Flow.
 * Under 5 kt or in variable wind the calm-wind configuration (FAA JO 7110.65 3-5-1); else the first whose tailwind
 * and crosswind limits hold at the gusts' speed (ICAO Doc 4444 7.2.6); else as airfields do (design-2, section 9).
 */
export function chooseFlow(rules: FlowRules, wind: Wind, minuteOfDay: number): FlowChoice {
  const { configurations, ends } = rules;
  const against = configurations.map((c) => passedOver(c, ends, minuteOfDay));
  const answer = (index: number, why: string): FlowChoice => {
    const configuration = configurations[index] as Configuration;
    const chosen = servedBy(configuration, ends);
    const reasons = [why, ...missing(configuration, ends), ...unreadHours(configuration)];
    return {
      ...refs(chosen),
      either: false,
      light: lightRunways(ends),
      configuration: index,
      reason: reasons.join('; '),
    };
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
  return byRunways(rules, wind, skipped);
}

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

/** What airfields do without configurations, or where none of them holds. */
function byRunways({ ends, light, configurations }: FlowRules, wind: Wind, skipped: string[]): FlowChoice {
  const { ends: used, either, reason } = runwayInUse(ends, light, wind);
  const refs = used.map((e) => e.ref);
  return {
    arrivals: refs,
    departures: refs,
    either,
    light: lightRunways(ends),
    configuration: null,
    reason: [...noneHolds(configurations, used, wind), reason, ...unnamed(configurations, skipped)].join(
      '; ',
    ),
  };
}

/** Ends that the survey's own limits speak against must not be read as recommended. */
const noneHolds = (
  configurations: readonly Configuration[],
  used: readonly FlowEnd[],
  { from }: Wind,
): string[] => {
  if (configurations.length === 0) return [];
  if (from === null || used.length === 0) return ['No configuration holds'];
  return [
    'No configuration is within its limits: the ends named are by wind and runways alone, to be checked',
  ];
};

const unnamed = (configurations: readonly Configuration[], skipped: string[]): string[] =>
  configurations.length === 0 ? ['the survey names no flow configurations'] : skipped;
