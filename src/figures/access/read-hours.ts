/** When a span of a day's opening hours begins or ends: minutes since midnight, or with the sun. */
export type Bound = number | 'sunrise' | 'sunset';

/** "Mo-Fr 06:00-22:00": a span that begins on these days, over midnight where it ends no later than it begins. */
export interface OpenSpan {
  /** Days of the week on which it begins, 0 Monday to 6 Sunday. */
  readonly days: readonly number[];
  readonly from: Bound;
  readonly to: Bound;
}

const week = ['mo', 'tu', 'we', 'th', 'fr', 'sa', 'su'];
const everyDay = [0, 1, 2, 3, 4, 5, 6];

const bound = String.raw`\d{1,2}:\d{2}|sunrise|sunset`;
const days = String.raw`(${week.join('|')})(?:\s*[-–]\s*(${week.join('|')}))?`;
const span = new RegExp(String.raw`^(?:${days}\s+)?(${bound})\s*(?:-|–|to)\s*(${bound})$`, 'i');
const daysAlone = new RegExp(`^${days}$`, 'i');
const always = /^(?:always|always open|24\/7)$/i;

/**
 * Opening hours as people note them: `[Mo-Fr ]HH:MM-HH:MM`, separated by commas, local time, past midnight allowed,
 * `sunrise` and `sunset` as times (design, part two, section 11). Days hold until others are named, so that a lunch break
 * does not open the weekend; as maps have it, days may be a list too, and semicolons stand between lists. Null for what cannot be
 * read: that is a doubt, and counts as open.
 */
export function readOpeningHours(text: string): readonly OpenSpan[] | null {
  const whole = text.trim();
  if (always.test(whole)) return [{ days: everyDay, from: 0, to: 24 * 60 }];
  const spans: OpenSpan[] = [];
  for (const list of whole.split(';')) {
    let on: readonly number[] = everyDay;
    let named: readonly number[] = [];
    for (const part of list.split(',')) {
      const alone = daysAlone.exec(part.trim());
      if (alone) {
        named = [...named, ...daysOf(alone[1], alone[2])];
        continue;
      }
      const [, first, last, begins, ends] = span.exec(part.trim()) ?? [];
      const [from, to] = [boundOf(begins), boundOf(ends)];
      if (from === null || to === null) return null;
      if (first !== undefined) named = [...named, ...daysOf(first, last)];
      if (named.length > 0) on = [...new Set(named)];
      named = [];
      spans.push({ days: on, from, to });
    }
    // Days without hours.
    if (named.length > 0) return null;
  }
  return spans;
}

function boundOf(text: string | undefined): Bound | null {
  const word = text?.toLowerCase();
  if (word === undefined || word === 'sunrise' || word === 'sunset') return word ?? null;
  const [hours = NaN, minutes = NaN] = word.split(':').map(Number);
  return minutes < 60 && hours * 60 + minutes <= 24 * 60 ? hours * 60 + minutes : null;
}

/** "Fr-Mo" goes over the week's end. */
function daysOf(first = '', last?: string): readonly number[] {
  const from = week.indexOf(first.toLowerCase());
  const to = last === undefined ? from : week.indexOf(last.toLowerCase());
  return everyDay.map((k) => (from + k) % 7).slice(0, ((to - from + 7) % 7) + 1);
}
