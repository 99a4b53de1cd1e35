import type { Contents } from '../survey/contents';
import { Memo } from '../survey/memo';
import { civilTwilightAltitude, sunAt } from '../figures/light/sun';
import { sunTimes } from '../figures/light/sun-times';
import { dateAt, dayOf } from '../time/local-time';

export interface Hours {
  readonly from: number;
  readonly to: number;
}

const dayMs = 86_400_000;

/** Asked at every look at a day: the newest answers about a site. */
const kept = new Memo<Hours>({ each: 4 });

/**
 * From civil dawn to civil dusk of the site's local day that holds an instant; the calendar day where there is none. In
 * high latitudes dusk may come after midnight: it is that after dawn.
 */
export const lightHours = ({ site }: Pick<Contents, 'site'>, at: number): Hours =>
  kept.get([site, at], () => hoursOfDay(site, at));

function hoursOfDay(site: Contents['site'], at: number): Hours {
  const day = dayOf(dateAt(at, site.timeZone), site.timeZone);
  const { civilDawn } = sunTimes(site.reference, day.from, day.to);
  if (civilDawn === null) return day;
  const { civilDusk } = sunTimes(site.reference, civilDawn, civilDawn + dayMs);
  // Found at dawn itself, to half a second, it is no dusk.
  const isDusk =
    civilDusk !== null &&
    sunAt(site.reference, (civilDawn + civilDusk) / 2).geometricAltitude > civilTwilightAltitude;
  return isDusk && civilDusk - civilDawn > 1000 ? { from: civilDawn, to: civilDusk } : day;
}

/** From + k x step (s), before `to`; whole seconds, as they are printed. */
export function instantsWithin({ from, to }: Hours, stepSeconds: number): number[] {
  const first = Math.ceil(from / 1000) * 1000;
  const instants: number[] = [];
  for (let k = 0; first + k * stepSeconds * 1000 < to; k++) instants.push(first + k * stepSeconds * 1000);
  return instants;
}
