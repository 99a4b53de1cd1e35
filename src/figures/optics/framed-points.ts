import type { Subject } from '../../survey/schema/subject';
import { discUp, finBack, pointsOfDisc, tailplaneUp, tailSpanShare } from '../practice';
import type { Hold } from './framing';

type Size = Pick<Subject, 'length' | 'span' | 'height' | 'propulsion' | 'tailSpan'>;
type Point = readonly [forward: number, left: number, up: number];

/** The points of a subject by which it is framed: three numbers a point, m forward, left and up of its centre. */
export interface FramedPoints {
  readonly points: Float64Array;
  /** 1 where a point counts as the camera is held; what does not count still must not be behind the lens. */
  readonly counts: Uint8Array;
  /** m from the centre to the farthest of them. */
  readonly radius: number;
}

/** m from tip to tip of the tailplane: the subject's own word, else its usual share of the span. */
export const tailSpanOf = ({ span, tailSpan }: Pick<Size, 'span' | 'tailSpan'>): number =>
  tailSpan ?? tailSpanShare * span;

/** The points of several that fly at these places (m ahead, left and up of the first). */
export function pointsOfAll({ points, counts }: FramedPoints, places: readonly Point[]): FramedPoints {
  const all = places.flatMap((place) =>
    Array.from(points, (coordinate, k) => coordinate + (place[k % 3] as number)),
  );
  const of = (i: number) => Math.hypot(...all.slice(3 * i, 3 * i + 3));
  return {
    points: Float64Array.from(all),
    counts: Uint8Array.from(places.flatMap(() => Array.from(counts))),
    radius: Math.max(...Array.from({ length: all.length / 3 }, (_, i) => of(i))),
  };
}

/**
 * Nose, tail, fin tip and wheels, and the tips of wing and tailplane, or for a rotor the rim of its disc (design, sections 3
 * and 9). Of half an aircraft count the nose and the wheels, or the tail, fin tip, tailplane and wheels, and the centre, which
 * the axis meets. Facing nobody knows where, it is framed across the line of sight by the longer of its two extents.
 */
export function framedPoints(
  subject: Size,
  part: Exclude<Hold['part'], 'formation'>,
  headingKnown: boolean,
): FramedPoints {
  const { length, span, height, propulsion } = subject;
  const along = headingKnown ? length / 2 : Math.max(length, span) / 2;
  const front = part !== 'tail';
  const back = part !== 'nose';
  const all: (readonly [Point, boolean])[] = [
    [[along, 0, 0], front],
    [[-along, 0, 0], back],
    [[-finBack * length, 0, height / 2], back],
    [[0, 0, -height / 2], true],
  ];
  if (headingKnown && propulsion === 'rotor')
    for (let i = 0; i < pointsOfDisc; i++) {
      const turn = (2 * Math.PI * i) / pointsOfDisc;
      const rim = [(span / 2) * Math.cos(turn), (span / 2) * Math.sin(turn), discUp * height] as const;
      all.push([rim, part === 'whole']);
    }
  else if (headingKnown)
    for (const side of [1, -1]) {
      const tip = (side * tailSpanOf(subject)) / 2;
      all.push([[0, (side * span) / 2, 0], part === 'whole']);
      all.push([[-finBack * length, tip, tailplaneUp * height], back]);
    }
  return {
    points: Float64Array.from(all.flatMap(([point]) => point)),
    counts: Uint8Array.from(all, ([, counts]) => (counts ? 1 : 0)),
    radius: Math.max(...all.map(([point]) => Math.hypot(...point))),
  };
}
