import type { LitSide, LitSpan } from '../../figures/types';
import type { Day } from '../../time/day-share';
import { clockAt } from '../../time/local-time';

/**
 * Which side of a runway is lit at an instant, and until when: "south side lit, from 06:12 until 15:42". `light` and
 * `spans` are that runway's; `zone` is the airfield's.
 */
export function litWords(
  light: LitSide | null,
  instant: number,
  spans: readonly LitSpan[],
  day: Day,
  zone: string,
): string {
  if (!light) return 'the runway has no direction yet';
  if (light.why === 'sun-down') return `the sun is down${nextWords(instant, spans, zone)}`;
  if (light.why === 'along-runway') return `the sun is along the runway${nextWords(instant, spans, zone)}`;
  const span = spans.find((s) => s.from <= instant && instant <= s.to);
  const from = span && span.from > day.from ? `, from ${clockAt(span.from, zone)}` : '';
  const until = span && span.to < day.to ? ` until ${clockAt(span.to, zone)}` : '';
  return `${light.side} side lit${from}${until}`;
}

/** What is lit next, when nothing is. */
function nextWords(instant: number, spans: readonly LitSpan[], zone: string): string {
  const next = spans.find((s) => s.from > instant);
  return next ? `; ${next.side} side lit from ${clockAt(next.from, zone)}` : '';
}

/** The whole day in one line: "north side 05:40–08:15, south side 08:31–19:20". */
export const dayWords = (spans: readonly LitSpan[], day: Day, zone: string): string =>
  spans
    .map(({ from, to, side }) => {
      const end = to < day.to ? clockAt(to, zone) : '24:00';
      return `${side} side ${clockAt(from, zone)}–${end}`;
    })
    .join(', ') || 'neither side is lit on this day';

/** px that a letter of the small type takes, the wide ones included. */
const letterWidth = 8;

/** A lit side in as many words as some px have room for: "north-east side", "north-east", "NE", nothing. */
export function sideLabel(side: string, room: number): string {
  const letters = side
    .split('-')
    .map((word) => word.charAt(0).toUpperCase())
    .join('');
  return [`${side} side`, side, letters].find((text) => text.length * letterWidth <= room) ?? '';
}
