import { describe, expect, test } from 'vitest';
import { destination } from '../../src/figures/geometry/earth';
import { bestIndex, closestIndex, scoreAt } from '../../src/figures/best-in-view';
import { flankLitAt, lightAngleAt, lightClassAt } from '../../src/figures/light-on-view';
import { glareAt } from '../../src/figures/glare-on-view';
import { sunThere } from '../../src/figures/light/sun-there';
import { figuresFor } from '../../src/figures/figures-for';
import { framingOf, halfDiagonal } from '../../src/figures/optics/framing';
import { reachOf } from '../../src/figures/optics/reach';
import { StandingWorth } from '../../src/figures/standing-worth';
import { PathInView } from '../../src/figures/path-in-view';
import { contentsOf, plainKit, plainSubject, runwayFeature, spotFeature } from '../support/contents';
import { eyeOver, oneSamplePath } from '../support/one-sample';

const eye = [8.55, 47.45] as const;
const contents = contentsOf([], { subjects: [plainSubject], kit: plainKit });
const framing = framingOf(contents.subject, contents.body, contents.kit.fill);
const reach = reachOf(contents.kit);
const sun = (azimuth: number, altitude: number) =>
  sunThere({ azimuth, altitude, geometricAltitude: altitude });

/** An aircraft 800 m away on a bearing, level with the eye or `above` m higher, its nose to a heading. */
function lookAt(bearing: number, heading: number, above = 0, distance = 800): PathInView {
  const view = new PathInView();
  const path = oneSamplePath(destination(eye, bearing, distance), 400 + above, heading);
  view.look(path.samples, eyeOver(eye, 400), framing);
  return view;
}

describe('light on a sample', () => {
  test('[F90] light angle: 0 with the sun behind the photographer, 180 against it', () => {
    const view = lookAt(70, 340);
    // The sun behind the photographer stands opposite to the bearing.
    expect(lightAngleAt(view, 0, sun(250, 20))).toBeCloseTo(0, 1);
    expect(lightAngleAt(view, 0, sun(70, 20))).toBeCloseTo(180, 1);
    expect(lightAngleAt(view, 0, sun(160, 20))).toBeCloseTo(90, 1);
    expect(lightAngleAt(view, 0, sun(280, 75))).toBeCloseTo(30, 1);
  });

  test('[F91] the lit flank is the one on the eye side, whichever way the aircraft goes', () => {
    for (const heading of [340, 160]) {
      const view = lookAt(70, heading);
      expect(flankLitAt(view, 0, sun(250, 20)), String(heading)).toBe(true);
      expect(flankLitAt(view, 0, sun(70, 20)), String(heading)).toBe(false);
    }
  });

  test('[F92] dark up to a dot product of 0.1, lit above it', () => {
    const view = lookAt(70, 340);
    // The flank's normal points along 250 degrees; 5.74 degrees from grazing is a dot product of 0.1.
    expect(flankLitAt(view, 0, sun(250 + 90 - 5.6, 0))).toBe(false);
    expect(flankLitAt(view, 0, sun(250 + 90 - 5.9, 0))).toBe(true);
    // A high sun grazes as well: cos(84.2) = 0.101.
    expect(flankLitAt(view, 0, sun(250, 84.1))).toBe(true);
    expect(flankLitAt(view, 0, sun(250, 84.4))).toBe(false);
  });

  test('[F93] no flank within 10 degrees of nose-on or tail-on', () => {
    for (const [heading, seen] of [
      [250, false],
      [250 + 9.8, false],
      [250 + 10.2, true],
      [70 - 9.8, false],
      [70 - 10.2, true],
    ] as const)
      expect(flankLitAt(lookAt(70, heading), 0, sun(200, 20)) !== null, String(heading)).toBe(seen);
  });

  test('[F520] none on the extended centreline, however steep: a centimetre aside turns no flank', () => {
    // Coming over at 150 m: seen 40 degrees up, far from nose-on in space, straight ahead on the ground.
    for (const aside of [-5, -0.01, 0, 0.01, 5]) {
      const view = new PathInView();
      const place = destination(destination(eye, 70, 180), 160, aside);
      view.look(oneSamplePath(place, 550, 250).samples, eyeOver(eye, 400), framing);
      expect(Math.abs(view.cosAspectAt(0)), String(aside)).toBeLessThan(Math.cos((30 * Math.PI) / 180));
      expect(flankLitAt(view, 0, sun(200, 20)), String(aside)).toBeNull();
    }
    // 10 degrees of 180 m are 32 m.
    const seen = [-36, -28, 28, 36].map((aside) => {
      const view = new PathInView();
      const place = destination(destination(eye, 70, 180), 160, aside);
      view.look(oneSamplePath(place, 550, 250).samples, eyeOver(eye, 400), framing);
      return flankLitAt(view, 0, sun(160, 20));
    });
    expect(seen).toEqual([true, null, null, false]);
  });

  test('[F2080] none straight overhead either: a step aside under an aircraft turns no flank', () => {
    const over = (aside: number, bank = 0) => {
      const view = new PathInView();
      const change = { bank };
      view.look(
        oneSamplePath(destination(eye, 160, aside), 550, 250, change).samples,
        eyeOver(eye, 400),
        framing,
      );
      return flankLitAt(view, 0, sun(200, 60));
    };
    // 10 degrees off the vertical of 150 m are 26 m.
    for (const aside of [-25, -1, -0.01, 0, 0.01, 1, 25]) expect(over(aside), String(aside)).toBeNull();
    expect([over(-28), over(28)]).not.toContain(null);
    // One that is banked shows its top or its underside there.
    expect(over(0, 60)).not.toBeNull();
  });

  test('[F94] from below the class goes by the angle in three dimensions', () => {
    // The aircraft 45 degrees up in the south, the sun 50 degrees up in the north: level 0, in space 95 degrees.
    const low = lookAt(180, 90, 300);
    const high = lookAt(180, 90, 800);
    expect(lightClassAt(low, 0, sun(0, 50))).toBe('front-lit');
    expect(lightAngleAt(high, 0, sun(0, 50))).toBeCloseTo(0, 1);
    expect(lightClassAt(high, 0, sun(0, 50))).toBe('side-lit');
  });
});

describe('glare', () => {
  test('[F95] within half the diagonal angle and 10 degrees of the axis, with the sun up', () => {
    const view = lookAt(130, 40, 90);
    const needed = view.focalAt(0);
    expect(needed).toBeGreaterThan(reach.shortest);
    expect(needed).toBeLessThan(reach.longest * 1.5);
    const limit = halfDiagonal(Math.min(needed, reach.longest), framing) + 10;
    const elevation = (Math.asin((view.up[0] ?? NaN) / (view.range[0] ?? NaN)) * 180) / Math.PI;
    const glare = (azimuth: number, altitude: number) =>
      glareAt(view, 0, sun(azimuth, altitude), framing, reach);
    expect(glare(130, elevation)).toBe(true);
    expect(glare(130, elevation + limit - 0.05)).toBe(true);
    expect(glare(130, elevation + limit + 0.05)).toBe(false);
    expect(glare(130 + 180, elevation)).toBe(false);
    // Below the horizon there is no sun to shine in, however near to the axis.
    expect(glare(130, -0.9)).toBe(false);
    expect(glare(130, -0.8)).toBe(true);
  });

  test('[F96] the frame is the one of the focal length that the kit can give', () => {
    // Close by, the subject needs less than the shortest lens: the frame is that of 70 mm.
    const near = lookAt(130, 40, 0, 35);
    expect(near.focalAt(0)).toBeLessThan(70);
    const limit = halfDiagonal(70, framing) + 10;
    expect(glareAt(near, 0, sun(130 + limit - 0.1, 0), framing, reach)).toBe(true);
    expect(glareAt(near, 0, sun(130 + limit + 0.1, 0), framing, reach)).toBe(false);
    // Far away it needs more than the longest, 560 mm with the extender.
    const far = lookAt(130, 40, 0, 6000);
    expect(far.focalAt(0)).toBeGreaterThan(560);
    const narrow = halfDiagonal(560, framing) + 10;
    expect(glareAt(far, 0, sun(130 + narrow - 0.1, 0), framing, reach)).toBe(true);
    expect(glareAt(far, 0, sun(130 + narrow + 0.1, 0), framing, reach)).toBe(false);
  });
});

describe('the best and the closest sample', () => {
  test('[F97] an eye inside the aircraft needs no focal length, and is never the best place', () => {
    const view = lookAt(130, 40, 0, 5);
    expect(view.focalAt(0)).toBeNaN();
    const worth = new StandingWorth(view);
    worth.look(reach);
    expect(scoreAt(worth, 0, sun(300, 20))).toMatchObject({ reach: 0, total: 0 });
    expect([closestIndex(view), bestIndex(worth, sun(300, 20), reach)]).toEqual([0, 0]);
  });

  test('[F98] an eye at the very centre of the aircraft has no bearing, and does not spoil the best sample', () => {
    const runway = runwayFeature('rwy', eye, destination(eye, 80, 1500), [{ designator: '08' }, {}]);
    const lowWing = { ...plainSubject, height: 3.4 };
    const at = Date.parse('2026-06-21T15:00:00Z');
    const there = contentsOf([runway, spotFeature('spot', eye, { eyeHeight: 1.7 })], { subjects: [lowWing] });
    const seen = figuresFor(there, at, null, (kind, _runway, end) => kind === 'departure' && end === 0)
      .spots[0]?.paths[0];
    expect(seen?.closest).toMatchObject({ station: 0, slantRange: 0, focalLength: null });
    expect(seen?.best.score.total).toBeGreaterThan(0);
    expect(seen?.best.station).toBeGreaterThan(0);
    // No answer is null, never NaN: there is no direction to look in.
    const angles = {
      bearing: null,
      elevation: null,
      aspect: null,
      lightAngle: null,
      phaseAngle: null,
      flankLit: null,
    };
    expect(seen?.closest).toMatchObject({ ...angles, focalLength35: null, glare: false, hiddenBy: null });
    expect(Object.values(seen?.closest.score ?? { none: NaN }).every(Number.isFinite)).toBe(true);
    expect(seen?.closest.score.total).toBe(0);
  });
});
