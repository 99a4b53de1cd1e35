/** What a typed date is read by. */
export interface DateReading {
  /** The months, January first, each by all the names that it may have. */
  readonly months: readonly (readonly string[])[];
  /** Whether "6/7" is the seventh of June; else it is the sixth of July. */
  readonly monthFirst: boolean;
  /** The year of a date that states none. */
  readonly year: number;
}

/** Letters of a month's name that are enough: "jun" and "juin" are told apart by them. */
const enough = 3;

/**
 * A date as people type it ("2026-06-21", "21 June", "21.6.2026", "Sun, 21 Jun 2026"), as "2026-06-21"; null for
 * anything else. A month in words needs no order; of two numbers that one alone can be the day which is over 12.
 */
export function readDate(text: string, { months, monthFirst, year }: DateReading): string | null {
  const parts = text.toLowerCase().match(/\d+|\p{L}+/gu) ?? [];
  const numbers = parts.filter((part) => /^\d/.test(part));
  const named = parts.flatMap((part) => {
    const at = months.findIndex((names) => names.some((name) => isName(part, name.toLowerCase())));
    return at < 0 ? [] : [at + 1];
  });
  const [month] = named;
  if (month !== undefined) return named.length > 1 ? null : withMonth(month, numbers, year);
  if (numbers[0]?.length === 4 && numbers.length === 3)
    return dateOf(numbers[0], Number(numbers[1]), Number(numbers[2]));
  if (numbers.length !== 2 && numbers.length !== 3) return null;
  const [first, second] = [Number(numbers[0]), Number(numbers[1])];
  const isMonthFirst = first > 12 ? false : second > 12 ? true : monthFirst;
  const [day, inMonth] = isMonthFirst ? [second, first] : [first, second];
  return dateOf(numbers[2] ?? String(year), inMonth, day);
}

const isName = (part: string, name: string): boolean =>
  part === name || (part.length >= enough && name.startsWith(part));

function withMonth(month: number, numbers: readonly string[], year: number): string | null {
  const [first = '', second] = numbers;
  if (numbers.length === 0 || numbers.length > 2) return null;
  const yearFirst = first.length === 4;
  if (yearFirst && second === undefined) return null;
  return dateOf((yearFirst ? first : second) ?? String(year), month, Number(yearFirst ? second : first));
}

/** Years that a date may have: others are a slip of the finger. */
const plausible = /^(19|20|21)\d\d$/;

function dateOf(year: string, month: number, day: number): string | null {
  const full = year.length === 2 ? `20${year}` : year;
  if (!plausible.test(full)) return null;
  const text = `${full}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
  const at = new Date(`${text}T12:00:00Z`);
  // The thirtieth of February is the second of March.
  return !Number.isNaN(at.getTime()) && at.toISOString().startsWith(text) ? text : null;
}
