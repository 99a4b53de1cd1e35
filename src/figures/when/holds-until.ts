const minuteMs = 60_000;
/** Minutes between two looks: light comes and goes more slowly than that, or hardly counts. */
const coarse = 10;

/** The first instant (ms since 1970, to the minute) after `from` at which something holds no longer; null when it holds up to `to`. */
export function holdsUntil(holds: (instant: number) => boolean, from: number, to: number): number | null {
  for (let at = from; at < to; at += coarse * minuteMs) {
    const next = Math.min(to, at + coarse * minuteMs);
    if (holds(next)) continue;
    for (let minute = at + minuteMs; minute < next; minute += minuteMs) if (!holds(minute)) return minute;
    return next;
  }
  return null;
}
