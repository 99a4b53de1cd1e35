import { describe, expect, test } from 'vitest';
import { holdsUntil } from '../../../src/figures/when/holds-until';

const minute = 60_000;
const from = Date.UTC(2026, 5, 21, 8, 3);
const until = (end: number) => holdsUntil((at) => at < from + end * minute, from, from + 600 * minute);

describe('[F720] until when something holds', () => {
  test.each([1, 9, 10, 11, 47, 599, 600])('after %i minutes it ends, to the minute', (end) =>
    expect(until(end)).toBe(from + end * minute),
  );

  test('what holds to the end has none, and nothing is asked beyond it', () => {
    const asked: number[] = [];
    const holds = (at: number) => asked.push(at) > 0;
    expect(holdsUntil(holds, from, from + 95 * minute)).toBeNull();
    expect(Math.max(...asked)).toBe(from + 95 * minute);
  });

  test('what comes back later has ended all the same', () => {
    const holds = (at: number) => at < from + 31 * minute || at > from + 90 * minute;
    expect(holdsUntil(holds, from, from + 600 * minute)).toBe(from + 31 * minute);
  });
});
