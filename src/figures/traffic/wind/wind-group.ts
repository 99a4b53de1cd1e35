import { knotsPer, type Reading, type Wind, type WindUnit } from './wind';

/** What stands where a wind group stands, readable or not: a report's other groups never look like this. */
const looksLikeWind = /^(?:\d{3}|VRB|\/{3}|P|ABV)[\dGPABV/]*(?:KT|MPS|KMH)$/;
/** dddff(f), Gff(f), unit: WMO No. 306 FM 15, ICAO Annex 3 appendix 3; three digits of speed by FAA AIM 7-1. */
const group = /^(\d{3}|VRB)(\d{2}|[1-9]\d{2})(?:G(\d{2}|[1-9]\d{2}))?(KT|MPS|KMH)$/;

export const isWindGroup = (token: string): boolean => looksLikeWind.test(token);

/**
 * Reads one wind group of a METAR or TAF ("24015G25KT") by the strict grammar, in kt. Directions stay as written,
 * which is true in reports. A calm wind ("00000KT") has no direction, like a variable one.
 */
export function readWindGroup(text: string): Reading<Wind> {
  const token = text.trim().toUpperCase();
  const no = (why: string) => ({ ok: false, reason: `"${text.trim()}" ${why}` }) as const;
  if (looksLikeWind.test(token)) {
    if (/P|ABV/.test(token.replace(/MPS$/, '')))
      return no('says that the wind is stronger than the report can tell, and not how strong');
    if (token.includes('/')) return no('says that the wind was not measured');
  }
  const [, direction = '', mean = '', gust, unit = 'KT'] = group.exec(token) ?? [];
  if (direction === '')
    return no('is no wind group; one looks like 24015G25KT, VRB03KT, 00000KT or 24008MPS');
  const knots = knotsPer[unit as WindUnit];
  const speedKt = Number(mean) * knots;
  const gustKt = gust === undefined ? null : Number(gust) * knots;
  if (gustKt !== null && gustKt <= speedKt) return no('has gusts that are not above the mean wind');
  if (direction === 'VRB') return { ok: true, value: { from: null, speedKt, gustKt, varies: null } };
  const from = Number(direction);
  if (from > 360) return no('has a direction above 360 degrees');
  if (speedKt === 0) return { ok: true, value: { from: null, speedKt, gustKt, varies: null } };
  if (from === 0) return no('has direction 000, which only a calm has; a north wind is 360');
  return { ok: true, value: { from, speedKt, gustKt, varies: null } };
}

/** "290V360": between which directions the wind varies, clockwise; null for any other group. */
export function readVariation(token: string): readonly [number, number] | null {
  const [, first, last] = /^(\d{3})V(\d{3})$/.exec(token) ?? [];
  const bounds = [Number(first ?? NaN), Number(last ?? NaN)] as const;
  return bounds.every((b) => b <= 360) ? bounds : null;
}
