import { describe, expect, it } from 'vitest';
import { destination } from '../../../src/figures/geometry/earth';
import { thinnedLine } from '../../../src/map/overlays/thinned-line';

const start = [18.15, 50.92] as const;
const straight = Array.from({ length: 1000 }, (_, i) => destination(start, 67, 10 * i));

describe('[M330] the line of a recorded flight', () => {
  it('is its two ends where it was straight, but for the bend of the meridians', () => {
    expect(thinnedLine(straight, 2).length).toBeLessThan(5);
    expect(thinnedLine(straight, 2)[0]).toBe(straight[0]);
    expect(thinnedLine(straight, 2).at(-1)).toBe(straight.at(-1));
  });

  it('keeps a place that lies farther aside than the tolerance, and drops one that does not', () => {
    const beside = (m: number) =>
      straight.map((place, i) => (i === 500 ? destination(place, 157, m) : place));
    const spiked = beside(5);
    expect(thinnedLine(spiked, 2)).toContain(spiked[500]);
    expect(thinnedLine(beside(0.5), 2).length).toBeLessThan(5);
  });

  it('flies there and back', () => {
    const back = [...straight, ...straight.toReversed()];
    expect(thinnedLine(back, 2)).toContain(straight.at(-1));
  });

  it('leaves what has no length, or two positions, as it is', () => {
    expect(thinnedLine([], 2)).toEqual([]);
    expect(thinnedLine([start, start], 2)).toEqual([start, start]);
    expect(thinnedLine([start, start, start], 2)).toEqual([start, start]);
  });
});
