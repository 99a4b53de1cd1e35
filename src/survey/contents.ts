import type { Survey, Position } from './document';
import { readFeature, type FeatureReading, type ReadableKind } from './read-feature';
import { isObject } from './json';
import { readKit, readSubjects } from './read-kit';
import type { Problem } from './problems';
import type { Body, Kit, Lens } from './schema/kit';
import { readMovements, type Movement } from './schema/movement';
import type { Apron, FlightPath, GroundUse, NoGoArea, Obstacle, TaxiRoute } from './schema/places';
import { readPlan, type Plan } from './schema/plan';
import type { Runway } from './schema/runway';
import {
  readCurrent,
  readFlow,
  readMoments,
  readSite,
  type Configuration,
  type Moments,
  type Site,
} from './schema/site';
import type { StandingSpot } from './schema/standing-spot';
import type { Subject } from './schema/subject';
import { readWeatherMember, type Weather } from './schema/weather';
import { readWindRecord, type WindRecord } from './schema/wind-record';

/** What a survey says, with every documented default filled in. Figures read this and nothing else. */
export interface Contents {
  readonly site: Site & { readonly reference: Position };
  readonly kit: Kit;
  readonly subjects: readonly Subject[];
  readonly subject: Subject;
  readonly body: Body;
  readonly lenses: readonly Lens[];
  readonly moments: Moments;
  readonly configurations: readonly Configuration[];
  /** Index of the configuration for calm or variable wind, null when none is named. */
  readonly calm: number | null;
  /** The wind it is looked at with, null for none. */
  readonly weather: Weather | null;
  /** Arrivals and departures that are due. */
  readonly movements: readonly Movement[];
  /** Past winds, null for none. */
  readonly windRecord: WindRecord | null;
  /** Ways between spots, and the windows chosen to be taken along. */
  readonly plan: Plan;
  readonly runways: readonly Runway[];
  readonly spots: readonly StandingSpot[];
  readonly obstacles: readonly Obstacle[];
  readonly noGoAreas: readonly NoGoArea[];
  readonly aprons: readonly Apron[];
  readonly taxiRoutes: readonly TaxiRoute[];
  readonly flightPaths: readonly FlightPath[];
  /** Roads, paths, parking and greens: what people may stand on, drawn faintly; no figure asks for it yet. */
  readonly groundUses: readonly GroundUse[];
  readonly problems: readonly Problem[];
}

type Members = Omit<
  Contents,
  | 'runways'
  | 'spots'
  | 'obstacles'
  | 'noGoAreas'
  | 'aprons'
  | 'taxiRoutes'
  | 'flightPaths'
  | 'groundUses'
  | 'problems'
  | 'site'
> & {
  readonly site: Site;
  readonly problems: readonly Problem[];
};

const known = new WeakMap<object, Members>();

/**
 * How many of a kind are read: many times what a survey of the largest airfield has. What is beyond stays in the file
 * and is said; without a bound a file could stop the page for minutes.
 */
const most: Readonly<Record<ReadableKind, number>> = {
  runway: 100,
  'standing-spot': 500,
  obstacle: 20_000,
  'no-go': 1_000,
  apron: 1_000,
  'taxi-route': 1_000,
  'flight-path': 300,
  'ground-use': 5_000,
};

/** Reads the `sunside` member once for each version of it: dragging a feature does not change it. */
function readMembers(sunside: Survey['sunside']): Members {
  const seen = known.get(sunside);
  if (seen) return seen;
  const problems: Problem[] = [];
  const doubt = (reason: string) => void problems.push({ id: null, reason, used: true });
  const aside = (reason: string) => void problems.push({ id: null, reason, used: false });
  const kit = readKit(sunside['kit'], doubt, aside);
  const subjects = readSubjects(sunside['subjects'], doubt, aside);
  const current = readCurrent(sunside['current'], doubt);
  const pick = <T extends { readonly key: string }>(
    list: readonly T[],
    key: string | null,
    what: string,
  ): T => {
    const found = list.find((item) => item.key === key);
    if (key !== null && !found)
      doubt(`sunside.current.${what}: there is no "${key}"; the first of the list is used`);
    return found ?? (list[0] as T);
  };
  const members: Members = {
    site: readSite(sunside['site'], doubt),
    kit,
    subjects,
    subject: pick(subjects, current.subject, 'subject'),
    body: pick(kit.bodies, current.body, 'body'),
    lenses: current.lenses ? kit.lenses.filter((lens) => current.lenses?.includes(lens.key)) : kit.lenses,
    moments: readMoments(sunside['moments'], doubt),
    ...readFlow(sunside['flow'], doubt),
    weather: readWeatherMember(sunside['weather'], doubt),
    windRecord: readWindRecord(sunside['windRecord'], doubt),
    movements: readMovements(sunside['movements'], aside),
    plan: readPlan(sunside['plan'], doubt),
    problems,
  };
  known.set(sunside, members);
  return members;
}

/** The survey's contents and everything about it that a person should know. Cheap after small edits. */
export function readContents(survey: Survey): Contents {
  const members = readMembers(isObject(survey.sunside) ? survey.sunside : {});
  const problems = [...members.problems];
  const lists = {
    runway: [] as Runway[],
    'standing-spot': [] as StandingSpot[],
    obstacle: [] as Obstacle[],
    'no-go': [] as NoGoArea[],
    apron: [] as Apron[],
    'taxi-route': [] as TaxiRoute[],
    'flight-path': [] as FlightPath[],
    'ground-use': [] as GroundUse[],
  };
  const beyond = new Map<ReadableKind, number>();
  for (const feature of survey.features) {
    const reading: FeatureReading = readFeature(feature);
    if (reading.kind !== null) {
      const list: unknown[] = lists[reading.kind];
      if (list.length >= most[reading.kind]) {
        beyond.set(reading.kind, (beyond.get(reading.kind) ?? 0) + 1);
        continue;
      }
      list.push(reading.value);
    }
    problems.push(...reading.problems);
  }
  for (const [kind, count] of beyond)
    problems.push({
      id: null,
      reason: `${count} more features of the kind "${kind}": the first ${most[kind]} are read`,
      used: false,
    });
  const reference = members.site.reference ??
    lists.runway[0]?.line[0] ??
    lists['standing-spot'][0]?.position ?? [0, 0];
  return {
    ...members,
    site: { ...members.site, reference },
    runways: lists.runway,
    spots: lists['standing-spot'],
    obstacles: lists.obstacle,
    noGoAreas: lists['no-go'],
    aprons: lists.apron,
    taxiRoutes: lists['taxi-route'],
    flightPaths: lists['flight-path'],
    groundUses: lists['ground-use'],
    problems,
  };
}
