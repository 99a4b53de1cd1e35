import { offsetMs } from './local-time';

/** A date and time of the wall clock as a table has it. */
export interface Stamp {
  readonly year: number;
  readonly month: number;
  readonly day: number;
  readonly hour: number;
  readonly minute: number;
  /** Minutes ahead of UTC, null where the text names none. */
  readonly offset: number | null;
}

/** How dates with the year last are to be read: 3/4/2026 is the third of April or the fourth of March. */
export type DateOrder = 'dmy' | 'mdy';

const clock = String.raw`(?:[T\s,]+(\d{1,2})(?:[:.]?(\d{2}))?(?:[:.]?\d{2}(?:\.\d+)?)?\s*([ap]m)?)?`;
const zone = String.raw`\s*(Z|UTC|GMT|[+-]\d{2}:?\d{2})?`;
const yearFirst = new RegExp(String.raw`^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})${clock}${zone}$`, 'i');
const yearLast = new RegExp(String.raw`^(\d{1,2})[-/.](\d{1,2})[-/.](\d{4})${clock}${zone}$`, 'i');
const compact = /^(\d{4})(\d{2})(\d{2})[T\s]?(?:(\d{2}):?(\d{2})?(?:\d{2})?)?\s*(Z|UTC)?$/i;

function offsetOf(text: string | undefined): number | null {
  if (text === undefined) return null;
  const [, sign, hours = '', minutes = ''] = /^([+-])(\d{2}):?(\d{2})$/.exec(text) ?? [];
  return sign === undefined ? 0 : (sign === '-' ? -1 : 1) * (Number(hours) * 60 + Number(minutes));
}

/** Reads a date, with a time or without one (then midnight); null for anything else. Seconds are dropped. */
export function readStamp(text: string, order: DateOrder): Stamp | null {
  const typed = text.trim();
  const first = yearFirst.exec(typed);
  if (first) return stamp(first[1], first[2], first[3], first[4], first[5], first[6], first[7]);
  const last = yearLast.exec(typed);
  if (last) {
    const [day, month] = order === 'dmy' ? [last[1], last[2]] : [last[2], last[1]];
    return stamp(last[3], month, day, last[4], last[5], last[6], last[7]);
  }
  const short = compact.exec(typed);
  const read = short && stamp(short[1], short[2], short[3], short[4], short[5], undefined, short[6]);
  if (read && read.year >= 1900) return read;
  return /^\d{10}$/.test(typed) ? fromSeconds(Number(typed)) : null;
}

/** Seconds since 1970, as loggers write them. */
function fromSeconds(seconds: number): Stamp {
  const at = new Date(seconds * 1000);
  return {
    year: at.getUTCFullYear(),
    month: at.getUTCMonth() + 1,
    day: at.getUTCDate(),
    hour: at.getUTCHours(),
    minute: at.getUTCMinutes(),
    offset: 0,
  };
}

type Digits = string | undefined;
function stamp(
  year: Digits,
  month: Digits,
  day: Digits,
  hour: Digits,
  minute: Digits,
  half: Digits,
  zoneText: Digits,
): Stamp | null {
  const [y, m, d] = [Number(year), Number(month), Number(day)];
  let h = Number(hour ?? 0);
  if (half !== undefined && (h < 1 || h > 12)) return null;
  if (half !== undefined) h = (h % 12) + (half.toLowerCase() === 'pm' ? 12 : 0);
  const min = Number(minute ?? 0);
  const date = new Date(Date.UTC(y, m - 1, d));
  const exists = date.getUTCMonth() === m - 1 && date.getUTCDate() === d;
  if (!exists || h > 23 || min > 59) return null;
  return { year: y, month: m, day: d, hour: h, minute: min, offset: offsetOf(zoneText) };
}

/** A time of day, "14:25", "1425", "2:25 pm"; minutes since midnight, null for anything else. */
export function readClock(text: string): number | null {
  const [, hour, minute, half] =
    /^(\d{1,2})[:.h]?(\d{2})(?:[:.]\d{2})?\s*([ap]m)?\s*(?:Z|UTC|LT)?$/i.exec(text.trim()) ?? [];
  if (hour === undefined || minute === undefined) return null;
  let h = Number(hour);
  if (half !== undefined) {
    if (h < 1 || h > 12) return null;
    h = (h % 12) + (half.toLowerCase() === 'pm' ? 12 : 0);
  }
  return h <= 23 && Number(minute) <= 59 ? h * 60 + Number(minute) : null;
}

/** ms since 1970 of a stamp as if its clock showed UTC, its own offset taken off where it has one. */
export const stampInUtc = ({ year, month, day, hour, minute, offset }: Stamp): number =>
  Date.UTC(year, month - 1, day, hour, minute) - (offset ?? 0) * 60_000;

const dayMs = 86_400_000;

/**
 * Month (0 to 11) and hour of the clock in a zone, as month * 24 + hour, for a hundred thousand instants: the zone is
 * asked once a day of UTC, and by the instant only where its clocks change.
 */
export class MonthHours {
  readonly #zone: string;
  /** Offset at the beginning of each day of UTC. */
  readonly #offsets = new Map<number, number>();

  constructor(zone: string) {
    this.#zone = zone;
  }

  at(instant: number): number {
    const day = Math.floor(instant / dayMs);
    const offset = this.#atDay(day);
    const changes = offset !== this.#atDay(day + 1);
    const local = new Date(instant + (changes ? offsetMs(instant, this.#zone) : offset));
    return local.getUTCMonth() * 24 + local.getUTCHours();
  }

  #atDay(day: number): number {
    const known = this.#offsets.get(day);
    if (known !== undefined) return known;
    const offset = offsetMs(day * dayMs, this.#zone);
    this.#offsets.set(day, offset);
    return offset;
  }
}
