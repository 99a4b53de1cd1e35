import type { Survey, Position } from './document';
import { kinds, readableKinds, type KindLists, type ReadableKind } from './kinds';
import { readFeature } from './read-feature';
import { isObject } from './json';
import { readKit, readSubjects } from './read-kit';
import { Memo } from './memo';
import type { Problem } from './problems';
import type { Body, Kit, Lens } from './schema/kit';
import { readMovements, type Movement } from './schema/movement';
import { readPlan, type Plan } from './schema/plan';
import {
  readCurrent,
  readFlow,
  readMoments,
  readSite,
  type Configuration,
  type Moments,
  type Site,
  type SharesFrom,
} from './schema/site';
import { readRules, type Rules } from './schema/rules';
import { readSky, type SkyOfDay } from './schema/sky';
import { siteZone, type ZoneAt, type ZoneFrom } from './zones';
import type { Subject } from './schema/subject';
import { readWeatherMember, type Weather } from './schema/weather';
import { readWindRecord, type WindRecord } from './schema/wind-record';

/** What a survey says, with every documented default filled in. Figures read this and nothing else. */
export interface Contents extends KindLists {
  readonly site: Omit<Site, 'timeZone' | 'reference'> & {
    readonly reference: Position;
    /** IANA name of a zone that exists, whose clock the survey goes by. */
    readonly timeZone: string;
    readonly timeZoneFrom: ZoneFrom;
  };
  readonly kit: Kit;
  readonly subjects: readonly Subject[];
  readonly subject: Subject;
  readonly body: Body;
  readonly lenses: readonly Lens[];
  readonly moments: Moments;
  /** What was typed of the sky, a day each. */
  readonly sky: readonly SkyOfDay[];
  /** What the field allows. */
  readonly rules: Rules;
  readonly configurations: readonly Configuration[];
  /** Index of the configuration for calm or variable wind, null when none is named. */
  readonly calm: number | null;
  /** What shares of ends come from; null for the better of flights and winds, month by month. */
  readonly sharesFrom: SharesFrom | null;
  /** The wind it is looked at with, null for none. */
  readonly weather: Weather | null;
  /** Arrivals and departures that are due. */
  readonly movements: readonly Movement[];
  /** Past winds, null for none. */
  readonly windRecord: WindRecord | null;
  /** Ways between spots, and the windows chosen to be taken along. */
  readonly plan: Plan;
  readonly problems: readonly Problem[];
}

type Members = Omit<Contents, keyof KindLists | 'problems' | 'site'> & {
  readonly site: Site;
  readonly problems: readonly Problem[];
};

/** Key: the `sunside` member. Life: its own. Dragging a feature does not change it. */
const known = new Memo<Members>();
const membersOf = (sunside: Survey['sunside']): Members => known.get([sunside], () => readMembers(sunside));

function readMembers(sunside: Survey['sunside']): Members {
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
  return {
    site: readSite(sunside['site'], doubt),
    kit,
    subjects,
    subject: pick(subjects, current.subject, 'subject'),
    body: pick(kit.bodies, current.body, 'body'),
    lenses: current.lenses ? kit.lenses.filter((lens) => current.lenses?.includes(lens.key)) : kit.lenses,
    moments: readMoments(sunside['moments'], doubt),
    sky: readSky(sunside['sky'], doubt, aside),
    rules: readRules(sunside['rules'], doubt),
    ...readFlow(sunside['flow'], doubt),
    weather: readWeatherMember(sunside['weather'], doubt),
    windRecord: readWindRecord(sunside['windRecord'], doubt),
    movements: readMovements(sunside['movements'], aside),
    plan: readPlan(sunside['plan'], doubt),
    problems,
  };
}

/**
 * The survey's contents and everything about it that a person should know. Cheap after small edits. `zoneAt` says in which
 * time zone the airfield lies, for a survey that does not.
 */
export function readContents(survey: Survey, zoneAt: ZoneAt | null = null): Contents {
  const members = membersOf(isObject(survey.sunside) ? survey.sunside : {});
  const problems = [...members.problems];
  const lists = new Map<ReadableKind, unknown[]>(readableKinds.map((kind) => [kind, []]));
  const beyond = new Map<ReadableKind, number>();
  for (const feature of survey.features) {
    const reading = readFeature(feature);
    if (reading.kind !== null) {
      const list = lists.get(reading.kind) ?? [];
      if (list.length >= kinds[reading.kind].most) {
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
      reason: `${count} more features of the kind "${kind}": the first ${kinds[kind].most} are read`,
      used: false,
    });
  // Each list holds what the reader of its kind has made.
  const byList = Object.fromEntries(
    [...lists].map(([kind, list]) => [kinds[kind].list, list]),
  ) as unknown as KindLists;
  const place = members.site.reference ?? byList.runways[0]?.line[0] ?? byList.spots[0]?.position ?? null;
  const { doubt, ...zone } = siteZone(members.site.timeZone, place, zoneAt);
  if (doubt !== null) problems.push({ id: null, reason: doubt, used: true });
  return { ...members, ...byList, site: { ...members.site, ...zone, reference: place ?? [0, 0] }, problems };
}
