import { latestOnDayOfMonth } from '../../../time/day-of-month';
import { agrees, disagreement, groupsOf } from './metar';
import { libraryTaf, type LibraryPeriod } from './weather-report';
import { readSkyGroups, skyAfter, type ReportedSky } from './sky-groups';
import type { Reading, Wind } from './wind';
import { isWindGroup, readWindGroup } from './wind-group';

/** How a forecast wind holds: throughout, at the end of a change, now and then, or perhaps. */
export type Likelihood = 'throughout' | 'becoming' | 'at-times' | 'chance';

/** A wind of a forecast. Instants in ms since 1970, UTC. */
export interface ForecastWind {
  readonly from: number;
  readonly to: number;
  readonly likelihood: Likelihood;
  /** Percent, null where none is said. */
  readonly probability: number | null;
  readonly wind: Wind;
}

/** A sky of a forecast, as its winds. */
export interface ForecastSky extends ReportedSky {
  readonly from: number;
  readonly to: number;
  readonly likelihood: Likelihood;
  readonly probability: number | null;
}

export interface Taf {
  readonly station: string;
  readonly issued: number;
  readonly from: number;
  readonly to: number;
  /** Those that hold throughout cover the forecast without gaps, but where its wind could not be read. */
  readonly winds: readonly ForecastWind[];
  readonly skies: readonly ForecastSky[];
  readonly remarks: readonly string[];
}

const head =
  /^(?:TAF )*(?:(?:AMD|COR) )*([A-Z][A-Z0-9]{3}) (\d{2})([01]\d|2[0-3])([0-5]\d)Z (?:NIL|CNL|\d{4}\/\d{4})/;

/**
 * Reads the winds of a TAF (ICAO Annex 3 appendix 5, WMO No. 306 FM 51). The library cuts it into its periods; every
 * wind comes from its group by the strict grammar, and where the library's differs that is said and the group goes.
 */
export function readTaf(text: string, now: number): Reading<Taf> {
  const report = groupsOf(text).join(' ');
  const no = (reason: string) => ({ ok: false, reason }) as const;
  const [, station = '', day = '', hour = '', minute = ''] = head.exec(report) ?? [];
  if (station === '')
    return no('no TAF can be read here; one begins like TAF EDDF 251100Z 2512/2618 24015G25KT');
  if (/ (NIL|CNL)\b/.test(report)) return no(`the forecast of ${station} is empty or cancelled`);
  const issued = latestOnDayOfMonth(Number(day), Number(hour), Number(minute), now);
  const periods = issued === null ? null : libraryTaf(report, issued);
  if (issued === null || !periods) return no(`the forecast of ${station} cannot be read`);
  const read = windsOf(periods);
  const [from, to] = [Math.min(...periods.map((p) => p.from)), Math.max(...periods.map((p) => p.to))];
  if (!(to > from)) return no(`the forecast of ${station} covers no time`);
  if (read.winds.length === 0) return no(`the forecast of ${station} has no wind that can be used`);
  return { ok: true, value: { station, issued, from, to, ...read, skies: skiesOf(periods) } };
}

/** What one period's own text says of the wind: a wind, null for nothing, or why it cannot be used. */
function ownWind(raw: string): Reading<Wind> | null {
  const group = raw.split(' ').find(isWindGroup);
  return group === undefined ? null : readWindGroup(group);
}

function windsOf(periods: readonly LibraryPeriod[]) {
  const remarks = new Set<string>();
  const winds: ForecastWind[] = [];
  /** The wind that holds until something else is said; null while it cannot be read. */
  let holds: Wind | null = null;
  const add = (from: number, to: number, likelihood: Likelihood, wind: Wind, probability: number | null) => {
    if (to > from) winds.push({ from, to, likelihood, probability, wind });
  };
  for (const { from, to, change, probability, doneBy, raw, wind: theirs } of periods) {
    const own = ownWind(raw);
    if (own && !own.ok) remarks.add(`A wind of this forecast cannot be used: ${own.reason}.`);
    if (own?.ok && !agrees(theirs, own.value))
      remarks.add(disagreement(raw.split(' ').find(isWindGroup) ?? ''));
    const lasting = change === null || change === 'FM' || change === 'BECMG';
    if (!lasting) {
      if (own?.ok)
        add(
          from,
          to,
          change === 'PROB' || probability !== null ? 'chance' : 'at-times',
          own.value,
          probability,
        );
      continue;
    }
    const before: Wind | null = holds;
    if (own) holds = own.ok ? own.value : null;
    else if (change !== 'BECMG') holds = null;
    if (doneBy !== null && own?.ok) {
      // The old wind is still there while the new one comes; the next line may cut the change short.
      const done = Math.min(doneBy, to);
      if (before) add(from, done, 'throughout', before, null);
      add(from, done, 'becoming', own.value, null);
      add(done, to, 'throughout', own.value, null);
    } else if (holds) add(from, to, 'throughout', holds, null);
  }
  return { winds, remarks: [...remarks] };
}

/** The skies of a forecast: what a change leaves unsaid stays as it was, but a new line that begins "FM" says it all. */
function skiesOf(periods: readonly LibraryPeriod[]): ForecastSky[] {
  const skies: ForecastSky[] = [];
  let holds: ReportedSky = { direct: null, visibility: null };
  const add = (
    from: number,
    to: number,
    likelihood: Likelihood,
    sky: ReportedSky,
    probability: number | null,
  ) => {
    const said = sky.direct !== null || sky.visibility !== null;
    if (to > from && said) skies.push({ from, to, likelihood, probability, ...sky });
  };
  for (const { from, to, change, probability, doneBy, raw } of periods) {
    const own = readSkyGroups(raw.split(' ').filter((group) => !/^(?:BECMG|TEMPO|PROB\d\d)$/.test(group)));
    if (change !== null && change !== 'FM' && change !== 'BECMG') {
      const likelihood = change === 'PROB' || probability !== null ? 'chance' : 'at-times';
      add(from, to, likelihood, skyAfter(holds, own), probability);
      continue;
    }
    const before = holds;
    holds = change === 'BECMG' ? skyAfter(before, own) : own;
    // The old sky is still there while the new one comes.
    const done = Math.min(doneBy ?? from, to);
    add(from, done, 'throughout', before, null);
    add(Math.max(from, done), to, 'throughout', holds, null);
  }
  return skies;
}
