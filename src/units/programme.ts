/** An entry of a display's programme: "HH:MM" by the clock of the airfield, and a date where one stands over it. */
export interface ProgrammeLine {
  readonly time: string;
  readonly name: string;
  readonly date: string | null;
}
export interface ProgrammeReading {
  readonly entries: readonly ProgrammeLine[];
  /** Lines that hold no time of day and a name, as they stand. */
  readonly unread: readonly string[];
}

const entryForm =
  /^(\d{1,2})(?:[:.h]([0-5]\d)|([0-5]\d))(?:\s*(?:-|to)\s*\d{1,2}[:.h]?[0-5]\d)?\s*(?:hrs?|uhr|local|l)?[\s,;|:-]+(.+)$/i;
const dateForm = /^\d{4}-\d{2}-\d{2}$/;

/**
 * A programme as it is pasted: a time of day ("13:05", "1305", "13.05-13:20") and a name a line. A line with a date
 * alone (2026-06-21) goes for those below it. Of what is no such line nothing is lost: it is handed back.
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
    const [, hour, minute, together, name] = entryForm.exec(plain) ?? [];
    if (hour === undefined || name === undefined || Number(hour) > 23) unread.push(line.trim());
    else
      entries.push({ time: `${hour.padStart(2, '0')}:${minute ?? together ?? ''}`, name: name.trim(), date });
  }
  return { entries, unread };
}

/** The lines that `parseProgramme` reads back. */
export function formatProgramme(entries: readonly ProgrammeLine[]): string {
  let date: string | null = null;
  return entries
    .flatMap((entry) => {
      const day = entry.date !== null && entry.date !== date ? [entry.date] : [];
      date = entry.date;
      return [...day, `${entry.time} ${entry.name}`];
    })
    .join('\n');
}
