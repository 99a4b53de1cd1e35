import { knotsPer, reportedDirection, type Reading, type Wind, type WindUnit } from './wind';
import { isWindGroup, readWindGroup } from './wind-group';

const points = [
  'N',
  'NNE',
  'NE',
  'ENE',
  'E',
  'ESE',
  'SE',
  'SSE',
  'S',
  'SSW',
  'SW',
  'WSW',
  'W',
  'WNW',
  'NW',
  'NNW',
];
const units: readonly (readonly [RegExp, WindUnit])[] = [
  [/^(kts?|kn|knots?)?$/i, 'KT'],
  [/^(m\/s|mps)$/i, 'MPS'],
  [/^(km\/h|kmh|kph)$/i, 'KMH'],
];
/** "240/15", "240° 15 G25 kt", "SW at 8 m/s", "variable 3". */
const spoken =
  /^(?:from )?(\d{1,3}|[a-z]+)\s*(?:°|deg|degrees)?\s*(?:\/|at|,|\s)\s*(\d+(?:[.,]\d+)?)\s*(kts?|kn|knots?|m\/s|mps|km\/h|kmh|kph)?\s*(?:(?:g|gust(?:s|ing)?|\/|-)(?: to)?\s*(\d+(?:[.,]\d+)?)\s*(kts?|kn|knots?|m\/s|mps|km\/h|kmh|kph)?)?$/i;

const example = 'Type it like 240/15, 240/15G25, SW 8 m/s, variable 3 or calm, or paste a METAR or TAF.';

/** A wind as a person types it, in kt where no unit stands; a METAR's wind group too. Directions stay as typed. */
export function readTypedWind(text: string): Reading<Wind> {
  const typed = text.trim();
  const group = readWindGroup(typed);
  if (group.ok || isWindGroup(typed.toUpperCase())) return group;
  const calm: Wind = { from: null, speedKt: 0, gustKt: null, varies: null };
  if (/^calm$/i.test(typed)) return { ok: true, value: calm };
  const no = (why: string) => ({ ok: false, reason: `"${typed}" ${why}` }) as const;
  const [whole, direction = '', mean = '', unit, gust, gustUnit] = spoken.exec(typed) ?? [];
  if (whole === undefined) return no(`is no wind. ${example}`);
  const from = directionOf(direction);
  if (from === undefined) return no(`has no direction from 0 to 360 degrees. ${example}`);
  const knots = knotsPer[units.find(([pattern]) => pattern.test(unit ?? gustUnit ?? ''))?.[1] ?? 'KT'];
  const number = (digits: string) => Number(digits.replace(',', '.')) * knots;
  const speedKt = number(mean);
  const gustKt = gust === undefined ? null : number(gust);
  if (speedKt >= 100) return no('is more than 100 kt; check the numbers');
  if (gustKt !== null && gustKt <= speedKt) return no('has gusts that are not above the mean wind');
  return { ok: true, value: speedKt === 0 ? calm : { from, speedKt, gustKt, varies: null } };
}

/** Degrees, null for variable, undefined for no direction at all. */
function directionOf(text: string): number | null | undefined {
  if (/^(v|vrb|var|variable)$/i.test(text)) return null;
  const point = points.indexOf(text.toUpperCase());
  if (point !== -1) return reportedDirection(point * 22.5);
  const degrees = /^\d+$/.test(text) ? Number(text) : NaN;
  return degrees <= 360 ? reportedDirection(degrees) : undefined;
}
