import { describe, expect, test } from 'vitest';
import { destination, groundLine } from '../../../src/figures/geometry/earth';
import { outlineOf } from '../../../src/figures/sight/outline';
import { sightProfile } from '../../../src/figures/sight/profile';
import { outlookOf } from '../../../src/figures/outlook';
import { inspectPath } from '../../../src/figures/spot/inspect-path';
import { pathsOf } from '../../../src/figures/traffic/paths';
import type { Position } from '../../../src/survey/document';
import { readFeature } from '../../../src/survey/read-feature';
import {
  contentsOf,
  feature,
  plainKit,
  plainSubject,
  runwayFeature,
  spotFeature,
} from '../../support/contents';

const west = [8.5, 47.4] as const;
const ends = [
  { designator: '09', elevation: 400 },
  { designator: '27', elevation: 400 },
] as const;
const june = Date.UTC(2026, 5, 21, 10);
const december = Date.UTC(2026, 11, 21, 10);
/** m east of the western end and south of the runway. */
const at = (x: number, south: number): Position => destination(destination(west, 90, x), 180, south);

/** A hedge along the runway whose middle is `off` m in front of a spot 300 m south of it. */
function behind(hedge: object, off: number, eyeHeight: number) {
  const line = [at(0, 300 - off), at(2400, 300 - off)];
  const contents = contentsOf(
    [
      runwayFeature('rwy', west, destination(west, 90, 2400), ends),
      spotFeature('spot', at(1200, 300), { eyeHeight }),
      feature('hedge', 'obstacle', 'LineString', line, { height: 3, sight: 'hedge', ...hedge }),
    ],
    {
      kit: plainKit,
      subjects: [plainSubject],
      site: { elevation: 400, reference: west, timeZone: 'UTC' },
    },
  );
  const outlook = outlookOf(contents, null);
  const path = pathsOf(contents, (kind, _, end) => kind === 'departure' && end === 0, null)[0];
  const [spot] = contents.spots;
  if (!path || !spot) throw new Error('expected a path and a spot');
  const i = path.samples.station.indexOf(1200);
  return {
    share: (instant: number) => inspectPath(spot, path, 1200, outlook, instant)?.score.sight,
    profile: (instant: number) => sightProfile(spot, path, i, outlook, instant),
  };
}

describe('[F800] a hedge hides from its top down to its underside', () => {
  // An eye 0.6 m up, 5 m from the hedge: lines to an aircraft 300 m off cross it at about 0.6 to 0.8 m.
  test('a low eye looks below it, and the side view says the same', () => {
    const { share, profile } = behind({ underside: 1.2 }, 5, 0.6);
    expect(share(june)).toBe(1);
    const { first, raise, obstacles } = profile(june);
    expect([first, raise]).toEqual([null, 0]);
    expect(obstacles[0]).toMatchObject({ id: 'hedge', hides: true });
    expect((obstacles[0]?.underside ?? 0) - (obstacles[0]?.foot ?? 0)).toBeCloseTo(1.2, 6);
  });

  test('a standing eye does not, nor does a low one where the hedge is closed to its foot', () => {
    expect(behind({ underside: 1.2 }, 5, 1.7).share(june)).toBe(0);
    const closed = behind({}, 5, 0.6);
    expect(closed.share(june)).toBe(0);
    expect(closed.profile(june).first?.by).toBe('hedge');
  });

  test('nor where the far face of a broad one comes down into the line', () => {
    // 40 m broad, from 5 to 45 m off: lines to the fin rise above 0.75 m on the way through.
    const half = behind({ underside: 0.75, width: 40 }, 25, 0.6).share(june) ?? NaN;
    expect(half).toBeLessThan(1);
    expect(behind({ underside: 0.75, width: 0.2 }, 5.1, 0.6).share(june)).toBe(1);
  });

  test('without leaves it is a veil, with evergreen months it hides all year', () => {
    const { share, profile } = behind({}, 5, 1.7);
    expect(share(december)).toBe(1);
    expect(profile(december).first).toBeNull();
    const allYear = { leafMonths: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] };
    expect(behind(allYear, 5, 1.7).share(december)).toBe(0);
  });
});

describe('[F801] a line with a width is a band round it', () => {
  const outline = (properties: object, line: readonly Position[]) => {
    const reading = readFeature(
      feature('o', 'obstacle', 'LineString', line, { height: 2, ...properties }) as never,
    );
    if (reading.kind !== 'obstacle') throw new Error('expected an obstacle');
    return outlineOf(reading.value);
  };

  test('a hedge is a metre across unless it says otherwise; a fence is a line', () => {
    const line = [at(0, 0), at(100, 0)];
    const { chains, closed } = outline({ sight: 'hedge' }, line);
    const ring = chains[0] ?? [];
    expect(closed).toBe(true);
    expect(ring).toHaveLength(5);
    expect(ring[4]).toEqual(ring[0]);
    expect(groundLine(ring[0] as Position, ring[3] as Position).distance).toBeCloseTo(1, 2);
    expect(groundLine(ring[0] as Position, ring[1] as Position).distance).toBeCloseTo(100, 2);
    expect(outline({ sight: 'mesh' }, line)).toEqual({ chains: [line], closed: false });
    expect(outline({ sight: 'hedge', width: 0 }, line).closed).toBe(false);
  });

  test('at a right angle its corners lie on the halving line, and a hairpin grows no spike', () => {
    const ring = outline({ sight: 'hedge', width: 2 }, [at(0, 0), at(50, 0), at(50, 50)]).chains[0] ?? [];
    const corner = [ring[1], ring[4]].map((p) => groundLine(at(50, 0), p as Position).distance);
    corner.forEach((distance) => expect(distance).toBeCloseTo(Math.SQRT2, 2));
    const back = outline({ sight: 'hedge', width: 2 }, [at(0, 0), at(50, 0), at(0, 0.5)]).chains[0] ?? [];
    back.forEach((p) => expect(groundLine(at(50, 0), p).distance).toBeLessThan(60));
  });

  test('one without length stays what it is', () => {
    expect(outline({ sight: 'hedge' }, [at(0, 0), at(0, 0)]).closed).toBe(false);
  });
});

test('[S302] an underside above the top is a doubt, and the obstacle hides down to its foot', () => {
  const reading = readFeature(
    feature('o', 'obstacle', 'LineString', [at(0, 0), at(9, 0)], { height: 2, underside: 2 }) as never,
  );
  expect(reading.kind === 'obstacle' && reading.value.underside).toBe(0);
  expect(reading.problems).toEqual([
    {
      id: 'o',
      used: true,
      reason: 'underside: 2 m is not below the top at 2 m; it hides down to its foot',
    },
  ]);
});
