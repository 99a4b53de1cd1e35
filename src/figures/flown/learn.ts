import { atOnce } from '../../survey/at-once';
import type { Contents } from '../../survey/contents';
import type { EndIndex } from '../../survey/schema/runway';
import { sampleStep } from '../traffic/samples';
import { endPairs, useOf, type EndUse } from './end-uses';
import { isRecorded } from './packed-flights';
import { percentile, spreadOf, type Spread } from './percentile';
import { learnedTo, runAlong, type RunAlong } from './run-along';
import type { RecordedFlight } from './track';
import { wayOf, type FlownKind } from './way-of';

/** 10th, 50th and 90th percentile. */
export type Band = readonly [low: number, middle: number, high: number];

export interface FlownStation {
  /** As the end's path counts them; multiples of 20 m. */
  readonly station: number;
  /** m of the centre above the landing threshold. */
  readonly height: Band;
  /** m to the right of the flight; null where flights are not on the runway's line there. */
  readonly offset: Band | null;
  /** m/s over the ground, median; null without recorded times. */
  readonly speed: number | null;
}

/** What recorded flights say of one end and kind of traffic. Spreads are median and quartiles over the flights. */
export interface Flown {
  readonly runway: string;
  readonly end: EndIndex;
  readonly kind: FlownKind;
  /** Ids of the flight paths that it rests on. */
  readonly flights: readonly string[];
  /** Degrees. */
  readonly glide: Spread | null;
  /** m of the centre above the landing threshold where the glide crosses it. */
  readonly crossing: Spread | null;
  /** The same of the wheels. */
  readonly wheels: Spread | null;
  /** m beyond the landing threshold. */
  readonly touchdown: Spread | null;
  /** m from the pavement end. */
  readonly liftOff: Spread | null;
  /** Rise over run. */
  readonly gradient: Spread | null;
  readonly stations: readonly FlownStation[];
}

export interface Learned {
  readonly flown: readonly Flown[];
  /** Recorded flights of an end and kind that has too few of them: counted, not learned from. */
  readonly few: readonly {
    /** How many there must be. */
    readonly needed: number;
    readonly runway: string;
    readonly end: EndIndex;
    readonly kind: FlownKind;
    readonly flights: number;
  }[];
  /** Every flight that used an end, however few there are of its kind. */
  readonly uses: readonly EndUse[];
  /** Go-arounds, crossings, flights that were lost on the way, and all else. */
  readonly other: number;
}

/** Flights of one end and kind from which on they say something of the next one (design part two, section 12). */
const leastFlights = 5;

/** Where flights are learned from: the ends that they may have used, and themselves. */
export interface ToLearnFrom extends Pick<Contents, 'site' | 'runways'> {
  readonly flights: readonly RecordedFlight[];
}

/** What the survey's recorded flights teach about its runways. */
export function learnFrom(contents: Pick<Contents, 'site' | 'runways' | 'flightPaths'>): Learned {
  return atOnce(learning({ ...contents, flights: contents.flightPaths.filter(isRecorded) }));
}

/** The same in steps of a millisecond or so; each yields the share of the flights that are done. */
export function* learning({ site, runways, flights }: ToLearnFrom): Generator<number, Learned> {
  const ends = endPairs({ site, runways });
  const groups = new Map<
    string,
    { runway: string; end: EndIndex; kind: FlownKind; ids: string[]; runs: RunAlong[] }
  >();
  let other = 0;
  const uses: EndUse[] = [];
  for (const [i, flight] of flights.entries()) {
    yield i / flights.length;
    const way = wayOf(flight, ends);
    if (!way) {
      other++;
      continue;
    }
    const use = useOf(flight, way);
    const { runway, end, kind } = use;
    const key = `${runway} ${end} ${kind}`;
    const group = groups.get(key) ?? { runway, end, kind, ids: [], runs: [] };
    groups.set(key, group);
    uses.push(use);
    group.ids.push(flight.id);
    group.runs.push(runAlong(way));
  }
  const all = [...groups.values()];
  const flown: Flown[] = [];
  for (const { runway, end, kind, ids, runs } of all)
    if (runs.length >= leastFlights) {
      const stations = yield* stationsOf(runs);
      flown.push({ runway, end, kind, flights: ids, ...told(runs), stations });
    }
  return {
    flown,
    few: all
      .filter(({ runs }) => runs.length < leastFlights)
      .map(({ runway, end, kind, runs }) => ({
        runway,
        end,
        kind,
        flights: runs.length,
        needed: leastFlights,
      })),
    uses,
    other,
  };
}

function told(runs: readonly RunAlong[]) {
  const of = (member: 'glide' | 'crossing' | 'wheels' | 'touchdown' | 'liftOff' | 'gradient') =>
    spreadOf(runs.map((run) => run[member]).filter((value) => value !== null));
  return {
    glide: of('glide'),
    crossing: of('crossing'),
    wheels: of('wheels'),
    touchdown: of('touchdown'),
    liftOff: of('liftOff'),
    gradient: of('gradient'),
  };
}

/** Every 20 m at which enough flights were seen. */
function* stationsOf(runs: readonly RunAlong[]): Generator<number, readonly FlownStation[]> {
  const first = Math.min(...runs.map(({ station }) => station[0] ?? Infinity));
  if (!Number.isFinite(first)) return [];
  const cursors = runs.map(() => 0);
  const stations: FlownStation[] = [];
  for (let at = Math.ceil(first / sampleStep) * sampleStep; at <= learnedTo; at += sampleStep) {
    yield 1;
    const heights: number[] = [];
    const offsets: number[] = [];
    const speeds: number[] = [];
    runs.forEach((run, r) => {
      const list = run.station;
      let i = cursors[r] as number;
      while (i + 1 < list.length && (list[i + 1] as number) < at) i++;
      cursors[r] = i;
      const [a, b] = [list[i], list[i + 1]];
      if (a === undefined || b === undefined || at < a || at > b || b - a > widestGap) return;
      const t = (at - a) / (b - a);
      heights.push(between(run.height, i, t) as number);
      const offset = between(run.offset, i, t);
      const speed = between(run.speed, i, t);
      if (offset !== null) offsets.push(offset);
      if (speed !== null) speeds.push(speed);
    });
    if (heights.length < leastFlights) continue;
    stations.push({
      station: at,
      height: bandOf(heights),
      offset: offsets.length < leastFlights ? null : bandOf(offsets),
      speed: spreadOf(speeds)?.median ?? null,
    });
  }
  return stations;
}

/** What a list says between its entries `i` and `i + 1`; null where one of them is not known. */
function between(values: readonly (number | null)[], i: number, share: number): number | null {
  const p = values[i] ?? null;
  const q = values[i + 1] ?? null;
  return p === null || q === null ? null : p + (q - p) * share;
}

/** m between two points of a flight beyond which nobody knows how it got from one to the other. CP. */
const widestGap = 1500;

function bandOf(values: readonly number[]): Band {
  const sorted = Float64Array.from(values).sort();
  return [percentile(sorted, 0.1), percentile(sorted, 0.5), percentile(sorted, 0.9)];
}
