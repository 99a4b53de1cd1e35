/**
 * Least distances of a display from its public, as published: information, never permission. What is said on the day by
 * the display's director goes before all of it.
 */
export interface PublishedMinimum {
  /** Document and issue. */
  readonly document: string;
  /** What it is the distance of. */
  readonly what: string;
  /** m from the crowd line, or the primary spectators, to the line that is flown. */
  readonly distance: number;
}

const knot = 1852 / 3600;
const foot = 0.3048;

interface Row extends PublishedMinimum {
  /** m/s above which it goes, and up to which. */
  readonly above: number;
  readonly upTo: number;
}

const row = (
  document: string,
  what: string,
  distance: number,
  [above, upTo]: readonly [number, number],
): Row => ({
  document,
  what,
  distance,
  above: above * knot,
  upTo: upTo * knot,
});

const caa = 'UK CAA CAP 403 (from memory, editions differ)';
const faa = 'FAA Order 8900.1 volume 3 chapter 6';

/**
 * FAA: the show lines of categories I, II and III (1,500, 1,000 and 500 ft) as the trade's own glossary prints them; their
 * speeds are from memory, the 500 ft of a fly-by are the order's special provisions. CAP 403: all from memory.
 */
const rows: readonly Row[] = [
  row(caa, 'fly-past', 50, [0, 100]),
  row(caa, 'fly-past', 100, [100, 200]),
  row(caa, 'fly-past', 150, [200, 300]),
  row(caa, 'fly-past', 200, [300, Infinity]),
  row(caa, 'turning or aerobatic', 100, [0, 100]),
  row(caa, 'turning or aerobatic', 150, [100, 200]),
  row(caa, 'turning or aerobatic', 200, [200, 300]),
  row(caa, 'turning or aerobatic', 230, [300, Infinity]),
  row(faa, 'fly-by along a show line', 500 * foot, [0, Infinity]),
  row(faa, 'aerobatic, category III', 500 * foot, [0, 156]),
  row(faa, 'aerobatic, category II', 1000 * foot, [156, 245]),
  row(faa, 'aerobatic, category I', 1500 * foot, [245, Infinity]),
];

/** What is published for a speed in m/s. */
export const publishedMinima = (speed: number): readonly PublishedMinimum[] =>
  rows
    .filter(({ above, upTo }) => speed > above && speed <= upTo)
    .map(({ document, what, distance }) => ({ document, what, distance }));
