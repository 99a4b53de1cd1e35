const minuteMs = 60_000;
/** ms by which a clock may be slow before "on the 9th at 19:55" means last month's. */
const slack = 60 * minuteMs;

/**
 * The last instant that was day `day` of a month at `hour`:`minute` UTC, as weather reports tell their time; up to
 * an hour ahead of `now` counts as now. Null for a day that no month has.
 */
export function latestOnDayOfMonth(day: number, hour: number, minute: number, now: number): number | null {
  if (day < 1 || day > 31) return null;
  const today = new Date(now + slack);
  for (let back = 0; back <= 3; back++) {
    const [year, month] = [today.getUTCFullYear(), today.getUTCMonth() - back];
    const instant = Date.UTC(year, month, day, hour, minute);
    // Date.UTC moves a 31st of a short month on: then it is not that day.
    if (new Date(instant).getUTCDate() === day && instant <= now + slack) return instant;
  }
  return null;
}
