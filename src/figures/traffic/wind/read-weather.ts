import { readMetar, groupsOf, type Metar } from './metar';
import { readTaf, type Taf } from './taf';
import { readTypedWind } from './typed-wind';
import type { Reading, Wind } from './wind';

/** What a typed or pasted text says of the wind. */
export interface WeatherText {
  /** A wind typed by hand, directions as typed; null where reports were pasted. */
  readonly typed: Wind | null;
  readonly metar: Metar | null;
  readonly taf: Taf | null;
  readonly remarks: readonly string[];
}

const isTime = (group: string | undefined) => /^\d{6}Z$/.test(group ?? '');
const isStation = (group: string) => /^[A-Z][A-Z0-9]{3}$/.test(group);
const isKeyword = (group: string) => group === 'METAR' || group === 'SPECI' || group === 'TAF';

/** Cuts pasted text into reports: at their keywords, at "=" and where another station's time begins. */
function reportsIn(text: string): string[] {
  const reports: string[][] = [[]];
  for (const piece of text.split('=')) {
    let current: string[] = [];
    reports.push(current);
    const groups = groupsOf(piece);
    groups.forEach((group, i) => {
      const began = current.some(isTime);
      const begins = isKeyword(group)
        ? current.some((g) => !isKeyword(g))
        : began && isStation(group) && isTime(groups[i + 1]);
      if (begins) reports.push((current = []));
      current.push(group);
    });
  }
  return reports.map((groups) => groups.join(' ')).filter((report) => report !== '');
}

/**
 * Reads a typed wind, a METAR, a TAF or several of them pasted together; of several of a kind the newest goes. What
 * cannot be read is refused with a reason, or said when something else can. `now`: ms since 1970.
 */
export function readWeather(text: string, now: number): Reading<WeatherText> {
  const reports = reportsIn(text);
  if (!reports.some((r) => /\d{6}Z/.test(r) || isKeyword(r.split(' ')[0] ?? ''))) {
    const typed = readTypedWind(text);
    return typed.ok
      ? { ok: true, value: { typed: typed.value, metar: null, taf: null, remarks: [] } }
      : typed;
  }
  const isTaf = (report: string) => /^TAF\b/.test(report) || / \d{6}Z \d{4}\/\d{4}\b/.test(report);
  const reasons: string[] = [];
  const good = <T>(readings: readonly Reading<T>[]): T[] =>
    readings.flatMap((r) => (r.ok ? [r.value] : (reasons.push(r.reason), [])));
  const metars = good(reports.filter((r) => !isTaf(r)).map((r) => readMetar(r, now)));
  const tafs = good(reports.filter(isTaf).map((r) => readTaf(r, now)));
  const metar = metars.toSorted((a, b) => b.observed - a.observed)[0] ?? null;
  const taf = tafs.toSorted((a, b) => b.issued - a.issued)[0] ?? null;
  if (!metar && !taf) return { ok: false, reason: reasons.join('; ') };
  const newest = metars.length > 1 || tafs.length > 1 ? ['Of several reports the newest is used.'] : [];
  const unread = reasons.map((reason) => `Not used: ${reason}.`);
  const remarks = [...(metar?.remarks ?? []), ...(taf?.remarks ?? []), ...newest, ...unread];
  return { ok: true, value: { typed: null, metar, taf, remarks } };
}
