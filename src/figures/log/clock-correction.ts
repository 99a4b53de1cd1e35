import { readClock } from '../../time/typed-clock';
import { dateAt, datePlus, parseDate, wallInstant } from '../../time/local-time';

/** s past the minute that a clock without a second hand shows: it may be any of them. */
const middleOfMinute = 30;
const hour = 3_600_000;

/**
 * What is to be added to a camera's clock, in s. `own`: when it says that it took a picture of a clock (ms since 1970);
 * `shown`: what that clock shows at the airfield ("18:01:30", "6:01 pm", "2026-06-21 18:01"). Without a date the nearest
 * such time counts: a wrong zone or a forgotten summer time is hours, not days. Null for what is no time.
 */
export function correctionFromClock(own: number, shown: string, zone: string): number | null {
  const [, day, minutes = '', seconds, half = ''] =
    /^\s*(?:(\d{4}-\d{2}-\d{2})[\sT]+)?(\d{1,2}[:.]\d{2})(?:[:.]([0-5]\d))?\s*([ap]\.?m\.?)?\s*$/i.exec(
      shown,
    ) ?? [];
  const clock = readClock(`${minutes}${half}`);
  const date = day === undefined ? null : parseDate(day);
  if (clock === null || (day !== undefined && date === null)) return null;
  const today = dateAt(own, zone);
  const days = date === null ? [-1, 0, 1].map((d) => datePlus(today, d)) : [date];
  const second = seconds ?? String(middleOfMinute);
  const times = days.flatMap((d) => {
    const { instant, came } = wallInstant(`${d}T${clock}:${second}`, zone);
    // In the night that has an hour twice, the later one is as likely.
    return came === 'twice' ? [instant, instant + hour] : [instant];
  });
  const [nearest] = times.toSorted((a, b) => Math.abs(a - own) - Math.abs(b - own));
  return nearest === undefined ? null : Math.round((nearest - own) / 1000);
}
