import type { LitSide, LitSpan } from '../../figures/types';
import type { Day } from '../../time/day-share';

/** An instant (ms since 1970) as a time of day at the airfield. */
export type Clock = (instant: number) => string;

/**
 * Which side of a runway is lit at an instant, and until when: "south side lit, from 06:12 until 15:42". `light` and
 * `spans` are that runway's; `clock` says an instant in the airfield's time.
 */
export function litWords(
  light: LitSide | null,
  instant: number,
  spans: readonly LitSpan[],
  day: Day,
  clock: Clock,
): string {
  if (!light) return 'the runway has no direction yet';
  if (light.why === 'sun-down') return `the sun is down${nextWords(instant, spans, clock)}`;
  if (light.why === 'along-runway') return `the sun is along the runway${nextWords(instant, spans, clock)}`;
  const span = spans.find((s) => s.from <= instant && instant <= s.to);
  const from = span && span.from > day.from ? `, from ${clock(span.from)}` : '';
  const until = span && span.to < day.to ? ` until ${clock(span.to)}` : '';
  return `${light.side} side lit${from}${until}`;
}

/** What is lit next, when nothing is. */
function nextWords(instant: number, spans: readonly LitSpan[], clock: Clock): string {
  const next = spans.find((s) => s.from > instant);
  return next ? `; ${next.side} side lit from ${clock(next.from)}` : '';
}

/** The whole day in one line: "north side 05:40–08:15, south side 08:31–19:20". */
export const dayWords = (spans: readonly LitSpan[], day: Day, clock: Clock): string =>
  spans
    .map(({ from, to, side }) => {
      const end = to < day.to ? clock(to) : 'midnight';
      return `${side} side ${clock(from)}–${end}`;
    })
    .join(', ') || 'neither side is lit on this day';

/** px that a letter of the small type takes, the wide ones included. */
const letterWidth = 8;

/** A lit side in as many words as some px have room for: with its times, "north-east side", "north-east", "NE", nothing. */
export function sideLabel(
  side: string,
  room: number,
  [from, to]: readonly [from: string, to: string],
): string {
  const letters = side
    .split('-')
    .map((word) => word.charAt(0).toUpperCase())
    .join('');
  const timed = [`${side} side`, side, letters].map((name) => `${from} ${name} ${to}`);
  return [...timed, `${side} side`, side, letters].find((text) => text.length * letterWidth <= room) ?? '';
}
