import { wrap180 } from '../../geometry/angles';
import {
  asLongFrom,
  calmBelowKt,
  clubField,
  eitherWithinKt,
  lightStrip,
  parallelFrom,
  parallelWithin,
  runwayLimits,
} from '../../practice';
import { windComponents } from '../wind/components';
import { strongest, type Wind } from '../wind/wind';
import type { FlowEnd } from './offered';
import { metres } from './serves';
import { headwindWords, kt, weak } from './wind-words';

/** Which ends airfields use in a wind where nothing is laid down: the same for arrivals and departures. */
export interface RunwayInUse {
  /** In the order of runways and ends; empty where none serves. */
  readonly ends: readonly FlowEnd[];
  /** Whether both ends of the runway do. */
  readonly either: boolean;
  /** Why, in a sentence. */
  readonly reason: string;
}

interface Strip {
  readonly name: string;
  readonly length: number;
  /** All its ends, and those that serve the subject. */
  readonly ends: readonly FlowEnd[];
  readonly serving: readonly FlowEnd[];
}

/** Rounding of a sum of degrees and knots: a limit that is met exactly holds. */
const rounding = 1e-9;

function stripsOf(ends: readonly FlowEnd[]): Strip[] {
  const byRunway = new Map<string, FlowEnd[]>();
  for (const end of ends) byRunway.set(end.ref.runway, [...(byRunway.get(end.ref.runway) ?? []), end]);
  return [...byRunway.values()].map((both) => ({
    name: both.map((e) => e.name).join('/'),
    length: both[0]?.length ?? 0,
    ends: both,
    serving: both.filter((e) => e.serves === null),
  }));
}

const longestOf = (strips: readonly Strip[]): number => Math.max(0, ...strips.map((s) => s.length));

/** The longest that serves decides on what is short beside it; where none serves, the longest that is open. */
function split(ends: readonly FlowEnd[]) {
  const strips = stripsOf(ends);
  const serving = strips.filter((s) => s.serving.length > 0);
  const open = strips.filter((s) => s.ends.some(({ ref, runway }) => !runway.ends[ref.end].closed));
  const longest = longestOf(serving.length > 0 ? serving : open);
  const short = open.filter((s) => s.length < lightStrip.share * longest && s.length < lightStrip.length);
  return { strips, serving, short, longest };
}

/** Ids of the runways that are so short beside the longest that they are for light aircraft. */
export const lightRunways = (ends: readonly FlowEnd[]): string[] =>
  split(ends).short.flatMap((s) => s.ends.slice(0, 1).map((e) => e.ref.runway));

const headwindOf = (end: FlowEnd, wind: Wind): number =>
  windComponents(wind.from, wind.speedKt, end.bearingDeg)?.headwindKt ?? 0;

/** The ends of a runway with the most headwind: both where they are alike. */
function facing(ends: readonly FlowEnd[], wind: Wind): FlowEnd[] {
  const most = Math.max(...ends.map((e) => headwindOf(e, wind)));
  return ends.filter((e) => headwindOf(e, wind) > most - eitherWithinKt);
}

/** What a wind is too much of for an end, in words; null where it suits. */
function beyond(end: FlowEnd, wind: Wind, crosswindKt: number): string | null {
  const parts = windComponents(wind.from, strongest(wind), end.bearingDeg);
  if (!parts) return null;
  const gusts = wind.gustKt === null ? '' : ' in the gusts';
  const across = Math.abs(parts.crosswindKt);
  if (-parts.headwindKt > runwayLimits.tailwindKt + rounding)
    return `${kt(-parts.headwindKt)} of tailwind${gusts}`;
  return across > crosswindKt + rounding ? `${kt(across)} of crosswind${gusts}` : null;
}

/**
 * The runway in use where the survey names no configuration, or none of them holds: the longest until its limits fail,
 * then the next; runways as long, and all of a club's for light aircraft, by headwind. `light`: the subject is a light
 * aircraft. Under 5 kt, or in a variable wind, the longest, either end (FAA JO 7110.65 3-5-1 leaves that to the field).
 */
export function runwayInUse(ends: readonly FlowEnd[], light: boolean, wind: Wind): RunwayInUse {
  const { strips, serving, short, longest } = split(ends);
  const candidates = light ? serving : serving.filter((s) => !short.includes(s));
  if (candidates.length === 0) return none(strips);
  const calm = wind.from === null || wind.speedKt < calmBelowKt;
  const equalFrom = light && longest < clubField ? 0 : asLongFrom * longestOf(candidates);
  const byLength = candidates.toSorted((a, b) => b.length - a.length);
  const headwind = (s: Strip) => Math.max(...s.serving.map((e) => headwindOf(e, wind)));
  const equal = byLength.filter((s) => s.length >= equalFrom);
  const ordered = calm
    ? byLength
    : [...equal.toSorted((a, b) => headwind(b) - headwind(a)), ...byLength.slice(equal.length)];
  const crosswindKt = light ? runwayLimits.lightCrosswindKt : runwayLimits.crosswindKt;
  const passed: string[] = [];
  for (const strip of ordered) {
    // In a calm too: the mean wind is, its gusts need not be.
    const suiting = strip.serving.filter((e) => beyond(e, wind, crosswindKt) === null);
    if (suiting.length > 0) {
      const chosen = calm ? suiting : facing(suiting, wind);
      const why = calm
        ? calmWords(strip, chosen, wind, crosswindKt)
        : chosenWords(strip, chosen, wind, longest);
      return used(strip, chosen, [why, ...passed]);
    }
    const [first] = facing(strip.serving, wind);
    if (first)
      passed.push(`${strip.name} is passed over: ${first.name} has ${beyond(first, wind, crosswindKt)}`);
  }
  return leastBad();

  /** Beyond all limits the most headwind goes; but where the end into wind is too short, nobody lands with the wind behind. */
  function leastBad(): RunwayInUse {
    const all = candidates.flatMap((s) => s.serving);
    const [first] = all.toSorted((a, b) => headwindOf(b, wind) - headwindOf(a, wind));
    const strip = candidates.find((s) => s.serving.includes(first as FlowEnd));
    const tail = first ? beyond(first, wind, Infinity) : null;
    const oneWay = strip?.ends.every((e) => e.serves === null || e.runway.ends[e.ref.end].closed) ?? false;
    if (!first || !strip || (tail && !oneWay)) {
      const left = first ? [`${first.name} has ${tail}`] : [];
      return { ends: [], either: false, reason: noEnd([...left, ...against(strips)]) };
    }
    const chosen = facing(strip.serving, wind);
    return used(strip, chosen, [
      `Beyond the limits of every runway: most headwind on ${headwindWords(chosen, wind)}`,
      ...passed,
    ]);
  }

  function used(main: Strip, chosen: readonly FlowEnd[], why: readonly string[]): RunwayInUse {
    const others = candidates.filter((s) => s !== main);
    const beside = others.flatMap((s) => parallelTo(s, main, chosen));
    const lights = light ? short.filter((s) => s !== main).flatMap((s) => offeredTo(s, wind)) : [];
    const all = new Set([...chosen, ...beside, ...lights]);
    const words = [
      ...why,
      ...(beside.length > 0 ? [`with it its parallels: ${names(beside)}`] : []),
      ...shortWords(
        short.filter((s) => s !== main),
        light,
      ),
      ...against(strips.filter((s) => s.length >= main.length || s === main)),
    ];
    return { ends: ends.filter((e) => all.has(e)), either: chosen.length === 2, reason: words.join('; ') };
  }
}

/** Ends of another runway beside the ones chosen, in the same direction. */
const parallelTo = (other: Strip, main: Strip, chosen: readonly FlowEnd[]): FlowEnd[] =>
  other.length < parallelFrom * main.length
    ? []
    : other.serving.filter((e) =>
        chosen.some((c) => Math.abs(wrap180(e.bearingDeg - c.bearingDeg)) <= parallelWithin),
      );

/** Ends of a strip for light aircraft: those of more headwind, never one with a tailwind that nobody lands with. */
function offeredTo(strip: Strip, wind: Wind): FlowEnd[] {
  const suiting = strip.serving.filter((e) => beyond(e, wind, Infinity) === null);
  if (wind.from === null || wind.speedKt < calmBelowKt) return suiting;
  return suiting.length > 0 ? facing(suiting, wind) : [];
}

const names = (ends: readonly FlowEnd[]): string => ends.map((e) => e.name).join(' and ');

const against = (strips: readonly Strip[]): string[] => [
  ...new Set(strips.flatMap((s) => s.ends.flatMap((e) => (e.serves === null ? [] : [e.serves])))),
];

const noEnd = (why: readonly string[]): string => `No end can be used: ${why.join(', ')}`;

function none(strips: readonly Strip[]): RunwayInUse {
  const reason = strips.length === 0 ? 'The survey has no runway' : noEnd(against(strips));
  return { ends: [], either: false, reason };
}

function shortWords(short: readonly Strip[], light: boolean): string[] {
  if (short.length === 0) return [];
  const list = short.map((s) => `${s.name} (${metres(s.length)})`).join(' and ');
  const are = short.length === 1 ? 'is' : 'are';
  return [
    light ? `${list} ${are} there for light aircraft besides` : `${list} ${are} for light aircraft only`,
  ];
}

function calmWords(strip: Strip, chosen: readonly FlowEnd[], wind: Wind, crosswindKt: number): string {
  const left = strip.serving.find((e) => !chosen.includes(e));
  if (left)
    return `${weak(wind)}, but not its gusts: ${names(chosen)} of ${strip.name}, the longest runway that serves; ${left.name} has ${beyond(left, wind, crosswindKt)}`;
  const end = chosen.length === 2 ? 'either end' : `${names(chosen)}, the only end`;
  return `${weak(wind)}: ${end} of ${strip.name}, the longest runway that serves`;
}

function chosenWords(strip: Strip, chosen: readonly FlowEnd[], wind: Wind, longest: number): string {
  const which = strip.length === longest ? ', the longest runway that serves' : '';
  if (chosen.length === 2)
    return `The wind is straight across ${strip.name}${which}: either end, ${headwindWords(chosen, wind)}`;
  return `Most headwind on ${strip.name}${which}: ${headwindWords(chosen, wind)}`;
}
