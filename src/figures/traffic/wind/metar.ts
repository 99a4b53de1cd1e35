import { latestOnDayOfMonth } from '../../../time/day-of-month';
import { readVariation, readWindGroup, isWindGroup } from './wind-group';
import { knotsPer, type Reading, type Wind } from './wind';
import { readSkyGroups, type ReportedSky } from './sky-groups';
import { libraryMetar, type LibraryWind } from './weather-report';

export interface Metar {
  /** ICAO location indicator. */
  readonly station: string;
  /** ms since 1970, UTC: the last such day and time of the month before now. */
  readonly observed: number;
  readonly wind: Wind;
  readonly sky: ReportedSky;
  /** What a person should know of how it was read, in plain words. */
  readonly remarks: readonly string[];
}

/** A report's groups: capitals, one blank between them, without the sign that ends it. */
export const groupsOf = (text: string): string[] =>
  text
    .toUpperCase()
    .replace(/[=$]\s*$/, '')
    .split(/\s+/)
    .filter(Boolean);

const head =
  /^(?:(?:METAR|SPECI)(?: COR)? )?(?:COR )?([A-Z][A-Z0-9]{3}) (\d{2})([01]\d|2[0-3])([0-5]\d)Z(?: (?:COR|AUTO|CC[A-Z]|RTD))*(?: (.*))?$/;

/**
 * Reads the wind and the sky of a METAR (ICAO Annex 3, WMO No. 306 FM 15). The wind comes from the group itself by its strict
 * grammar; the library reads the whole report beside it, and where the two differ that is said and the group goes.
 */
export function readMetar(text: string, now: number): Reading<Metar> {
  const groups = groupsOf(text);
  const no = (reason: string) => ({ ok: false, reason }) as const;
  if (groups[0] === 'TAF') return no('this is a TAF, a forecast; a METAR is what was observed');
  const [, station = '', day = '', hour = '', minute = '', rest = ''] = head.exec(groups.join(' ')) ?? [];
  if (station === '') return no('no METAR can be read here; one begins like METAR EDDF 251150Z 24015G25KT');
  const [first = '', second = ''] = rest.split(' ');
  if (first === 'NIL' || first === '') return no(`the report of ${station} has no wind in it`);
  if (!isWindGroup(first))
    return no(`the report of ${station} has no wind group after its time: "${first}" stands there`);
  const read = readWindGroup(first);
  if (!read.ok) return no(`the wind of ${station} cannot be used: ${read.reason}`);
  const observed = latestOnDayOfMonth(Number(day), Number(hour), Number(minute), now);
  if (observed === null) return no(`the report of ${station} is of a day ${day} that no month has`);
  const wind = { ...read.value, varies: readVariation(second) };
  const sky = readSkyGroups(rest.split(' '));
  return {
    ok: true,
    value: { station, observed, wind, sky, remarks: doubts(groups.join(' '), first, wind) },
  };
}

function doubts(report: string, group: string, wind: Wind): string[] {
  const library = libraryMetar(report);
  if (library === null) return ['The rest of the report could not be read; its wind could.'];
  return agrees(library.wind, wind) ? [] : [disagreement(group)];
}

export const disagreement = (group: string): string =>
  `The weather-report reader misreads ${group}; the wind is taken from the group itself.`;

/** Whether the library read the same wind as the group's grammar. */
export function agrees(library: LibraryWind | null, wind: Wind): boolean {
  if (library === null) return false;
  const near = (theirs: number, ours: number) => Math.abs(theirs * knotsPer[library.unit] - ours) < 1e-6;
  const gusts = library.gust === null ? wind.gustKt === null : near(library.gust, wind.gustKt ?? NaN);
  // The library gives a calm wind a direction; that one is not looked at.
  const direction = wind.speedKt === 0 || library.from === wind.from;
  return direction && near(library.speed, wind.speedKt) && gusts;
}
