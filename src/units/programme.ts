/**
 * An entry of a display's programme: "HH:MM" by the clock of the airfield, null where the programme has no time for it,
 * when it is over, a type of aircraft, and a date where one stands over it.
 */
export interface ProgrammeLine {
  readonly time: string | null;
  readonly to: string | null;
  readonly name: string;
  readonly type: string;
  readonly date: string | null;
}
export interface ProgrammeReading {
  readonly entries: readonly ProgrammeLine[];
  /** Lines that hold no time of day and a name, as they stand. */
  readonly unread: readonly string[];
}

const entryForm =
  /^(\d{1,2})(?:[:.h]([0-5]\d)|([0-5]\d))(?:\s*(?:-|to)\s*(\d{1,2})[:.h]?([0-5]\d))?\s*(?:hrs?|uhr|local|l)?[\s,;|:-]+(.+)$/i;
/** What stands for a time that is not known. */
const openForm = /^(?:tbc|tba|\?+|-{2,}(?::-{2})?)[\s,;|:-]+(.+)$/i;
const typeForm = /^(.+?)\s*[([]([^()[\]]+)[)\]]$/;
const dateForm = /^\d{4}-\d{2}-\d{2}$/;

/**
 * A programme as it is pasted: a time of day ("13:05", "1305", "13.05-13:20", "tbc" where nobody knows it) and a name a
 * line, the type of aircraft in brackets behind it. A line with a date alone (2026-06-21) goes for those below it. Of
 * what is no such line nothing is lost: it is handed back.
 */
export function parseProgramme(text: string): ProgrammeReading {
  const entries: ProgrammeLine[] = [];
  const unread: string[] = [];
  let date: string | null = null;
  for (const line of text.split(/\r?\n/)) {
    const plain = line.replace(/[\u2012-\u2015]/g, '-').trim();
    if (plain === '') continue;
    if (dateForm.test(plain)) {
      date = plain;
      continue;
    }
    const read = timed(plain) ?? untimed(plain);
    if (read) entries.push({ ...read, date });
    else unread.push(line.trim());
  }
  return { entries, unread };
}

function timed(plain: string): Omit<ProgrammeLine, 'date'> | null {
  const [, hour, minute, together, toHour, toMinute, named] = entryForm.exec(plain) ?? [];
  if (hour === undefined || named === undefined || Number(hour) > 23 || Number(toHour ?? 0) > 23) return null;
  const clock = (h: string, m: string) => `${h.padStart(2, '0')}:${m}`;
  return {
    time: clock(hour, minute ?? together ?? ''),
    to: toHour === undefined || toMinute === undefined ? null : clock(toHour, toMinute),
    ...nameAndType(named),
  };
}

function untimed(plain: string): Omit<ProgrammeLine, 'date'> | null {
  const [, named] = openForm.exec(plain) ?? [];
  return named === undefined ? null : { time: null, to: null, ...nameAndType(named) };
}

function nameAndType(text: string): Pick<ProgrammeLine, 'name' | 'type'> {
  const [, name, type] = typeForm.exec(text.trim()) ?? [];
  return name === undefined || type === undefined
    ? { name: text.trim(), type: '' }
    : { name, type: type.trim() };
}

/** The lines that `parseProgramme` reads back. */
export function formatProgramme(entries: readonly ProgrammeLine[]): string {
  let date: string | null = null;
  return entries
    .flatMap((entry) => {
      const day = entry.date !== null && entry.date !== date ? [entry.date] : [];
      date = entry.date;
      const when = `${entry.time ?? 'tbc'}${entry.to === null ? '' : `-${entry.to}`}`;
      return [...day, `${when} ${entry.name}${entry.type === '' ? '' : ` (${entry.type})`}`];
    })
    .join('\n');
}
