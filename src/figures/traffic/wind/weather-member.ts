import type { Weather, WeatherSky, WeatherWind } from '../../../survey/schema/weather';
import { isoInstant } from '../../../time/local-time';
import type { WeatherText } from './read-weather';
import { fromMagnetic, type Wind } from './wind';

/** ms round its observation in which a METAR goes before a forecast: reports come every half hour or hour. */
const metarHolds = { before: 30 * 60_000, after: 60 * 60_000 } as const;

/**
 * What the survey keeps of a text that was read at an instant (ms since 1970). `magnetic`: degrees of declination
 * where a typed wind was told from magnetic north, else null; reports tell true directions.
 */
export function weatherMember(
  text: string,
  { typed, metar, taf, remarks }: WeatherText,
  magnetic: number | null,
  now: number,
): Weather {
  const winds: WeatherWind[] = [];
  const skies: WeatherSky[] = [];
  if (typed) winds.push(always(magnetic === null ? typed : fromMagnetic(typed, magnetic)));
  if (metar) {
    const { observed, wind } = metar;
    const bounds = { from: observed - metarHolds.before, to: observed + metarHolds.after };
    // Whatever the wind does later, clouds and mist are told of that hour alone.
    skies.push({ ...metar.sky, from: isoInstant(bounds.from), to: isoInstant(bounds.to), ...throughout });
    winds.push(
      taf ? { ...always(wind), from: isoInstant(bounds.from), to: isoInstant(bounds.to) } : always(wind),
    );
  }
  for (const { from, to, likelihood, probability, wind } of taf?.winds ?? [])
    winds.push({ ...always(wind), from: isoInstant(from), to: isoInstant(to), likelihood, probability });
  for (const { from, to, ...sky } of taf?.skies ?? [])
    skies.push({ ...sky, from: isoInstant(from), to: isoInstant(to) });
  const instant = (at: number | undefined) => (at === undefined ? null : isoInstant(at));
  const said = [...remarks, ...staleness(metar?.observed ?? null, taf?.to ?? null, now)];
  if (!typed && magnetic !== null) said.push('Reports give true directions; nothing was converted.');
  return {
    text: text.trim(),
    entered: isoInstant(now),
    source: typed ? 'typed' : 'report',
    magnetic: typed !== null && magnetic !== null,
    station: metar?.station ?? taf?.station ?? null,
    observed: instant(metar?.observed),
    issued: instant(taf?.issued),
    forecastFrom: instant(taf?.from),
    forecastTo: instant(taf?.to),
    remarks: said,
    follow: false,
    winds,
    skies,
  };
}

const throughout = { likelihood: 'throughout', probability: null } as const;

const hourMs = 3_600_000;

/** "5 hours", "7 days". */
function longTime(ms: number): string {
  const hours = Math.max(1, Math.round(ms / hourMs));
  return hours < 48 ? `${hours} ${hours === 1 ? 'hour' : 'hours'}` : `${Math.round(hours / 24)} days`;
}

/** Reports that are too old to say anything of now, in words. */
function staleness(observed: number | null, ended: number | null, now: number): string[] {
  const old = observed !== null && now - observed > 3 * hourMs;
  const over = ended !== null && now >= ended;
  return [
    ...(old ? [`This observation is ${longTime(now - observed)} old; the wind may be another by now.`] : []),
    ...(over
      ? [`This forecast ended ${longTime(now - ended)} ago and says nothing of now; paste a newer one.`]
      : []),
  ];
}

const always = ({ from, speedKt, gustKt, varies }: Wind): WeatherWind => ({
  from: null,
  to: null,
  direction: from,
  speedKt,
  gustKt,
  variesFrom: varies?.[0] ?? null,
  variesTo: varies?.[1] ?? null,
  likelihood: 'throughout',
  probability: null,
});
