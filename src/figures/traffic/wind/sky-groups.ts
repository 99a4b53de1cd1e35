import { cloudDirect, highCloudFt } from '../../practice';

/** What a report says of the sky; null for what it does not say. */
export interface ReportedSky {
  /** Share of direct sun, 0 to 1. */
  readonly direct: number | null;
  /** m. */
  readonly visibility: number | null;
}

const mile = 1609.344;
/** Covers from little to all: what the highest of them lets through counts. */
const covers = ['FEW', 'SCT', 'BKN', 'OVC'] as const;
const open = /^(?:SKC|CLR|NSC|NCD)$/;
const layer = /^(FEW|SCT|BKN|OVC)(\d{3}|\/{3})?(?:CB|TCU|\/{3})?$/;
const miles = /^([PM])?(?:(\d+)|(?:(\d+) )?(\d+)\/(\d+))SM$/;
/** Where a report goes over to what is expected, or to remarks: none of it is of the sky at hand. */
const ends = /^(?:RMK|NOSIG|BECMG|TEMPO|PROB\d\d)$/;

/**
 * The sky out of a report's groups behind its time or change (ICAO Annex 3, WMO No. 306 FM 15 and FM 51). Of several
 * layers the highest cover counts; one based above 20,000 ft counts one step lower.
 */
export function readSkyGroups(groups: readonly string[]): ReportedSky {
  const until = groups.findIndex((group) => ends.test(group));
  const own = until < 0 ? groups : groups.slice(0, until);
  if (own.includes('CAVOK')) return { direct: 1, visibility: 10_000 };
  return { direct: directIn(own), visibility: visibilityIn(own) };
}

function directIn(groups: readonly string[]): number | null {
  let step: number | null = null;
  for (const group of groups) {
    const [whole, cover, base] = layer.exec(group) ?? [];
    if (/^VV(?:\d{3}|\/{3})$/.test(group)) step = covers.length - 1;
    else if (open.test(group)) step = Math.max(step ?? 0, 0);
    else if (whole !== undefined) {
      const high = Number(base) * 100 > highCloudFt ? 1 : 0;
      step = Math.max(step ?? 0, covers.indexOf(cover as (typeof covers)[number]) - high, 0);
    }
  }
  return step === null ? null : cloudDirect[covers[step] as (typeof covers)[number]];
}

function visibilityIn(groups: readonly string[]): number | null {
  for (const [i, group] of groups.entries()) {
    const metric = /^(\d{4})(?:NDV)?$/.exec(group)?.[1];
    if (metric !== undefined) return metric === '9999' ? 10_000 : Math.max(50, Number(metric));
    const before = /^\d$/.test(groups[i - 1] ?? '') ? `${groups[i - 1]} ` : '';
    const [whole, sign, full, ones, over, under] = miles.exec(`${before}${group}`) ?? miles.exec(group) ?? [];
    if (whole === undefined) continue;
    const sum = full === undefined ? Number(ones ?? 0) + Number(over) / Number(under) : Number(full);
    // "P6SM" is more than can be told: nothing is taken off.
    return sign === 'P' ? 10_000 : Math.max(50, sum * mile);
  }
  return null;
}

/** The later word of two, what it leaves unsaid taken from the earlier one. */
export const skyAfter = (before: ReportedSky, now: ReportedSky): ReportedSky => ({
  direct: now.direct ?? before.direct,
  visibility: now.visibility ?? before.visibility,
});
