/** Dates and times of day as people read them. Zones are done with by then: what comes in is local already. */

export type ClockStyle = '24h' | '12h';

/** A time of day, "18:30", as it is or as "6:30 pm". */
export function clockWords(clock: string, style: ClockStyle): string {
  const [, hours, minutes = ''] = /^(\d{2}):(\d{2})$/.exec(clock) ?? [];
  if (hours === undefined || style === '24h') return clock;
  const hour = Number(hours);
  return `${hour % 12 === 0 ? 12 : hour % 12}:${minutes} ${hour % 24 < 12 ? 'am' : 'pm'}`;
}

const styles = {
  /** "Sunday, 21 June 2026". */
  day: { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' },
  /** "21 Jun 2026". */
  date: { day: 'numeric', month: 'short', year: 'numeric' },
  /** "Jun". */
  month: { month: 'short' },
} as const;

/** A date, "2026-06-21", in words of a language (BCP 47). */
export function dateWords(date: string, language: string, style: keyof typeof styles): string {
  const noon = new Date(`${date}T12:00:00Z`);
  if (Number.isNaN(noon.getTime())) return date;
  return new Intl.DateTimeFormat(language, { ...styles[style], timeZone: 'UTC' }).format(noon);
}
