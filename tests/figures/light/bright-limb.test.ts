import { Body, Equator, Horizon, Illumination, Observer } from 'astronomy-engine';
import { describe, expect, test } from 'vitest';
import { moonInPicture } from '../../../src/figures/frame/moon-in-picture';
import { brightLimb, moonlightFrom } from '../../../src/figures/light/bright-limb';
import { directionOf } from '../../../src/figures/light/direction-of';
import { sunAt } from '../../../src/figures/light/sun';
import { dot, type Vec3 } from '../../../src/figures/geometry/earth';

const RAD = Math.PI / 180;
/** Degrees from the pole of the axes (their third) to a vector square to `at`, by way of where the first angle grows. */
function positionAngle(at: Vec3, limb: Vec3, growing: Vec3): number {
  const pole: Vec3 = [0, 0, 1];
  const up = pole.map((p, k) => p - dot(pole, at) * (at[k] as number)) as unknown as Vec3;
  return (Math.atan2(dot(limb, growing), dot(limb, up) / Math.hypot(...up)) / RAD + 360) % 360;
}

describe('how the lit limb of the moon is turned', () => {
  /*
   * Meeus, Astronomical Algorithms (2nd edition), example 48.a, 1992 April 12, 0h TD: sun at right ascension 20.6579 and
   * declination +8.6964, moon at 134.6885 and +13.7684; position angle of the bright limb 285.0, lit share 0.6786. From memory.
   */
  test('[F1080] 285.0 degrees from celestial north in the worked example of Meeus', () => {
    const equatorial = (ra: number, dec: number): Vec3 => [
      Math.cos(dec * RAD) * Math.cos(ra * RAD),
      Math.cos(dec * RAD) * Math.sin(ra * RAD),
      Math.sin(dec * RAD),
    ];
    const moon = equatorial(134.6885, 13.7684);
    const limb = brightLimb(moon, equatorial(20.6579, 8.6964));
    if (!limb) throw new Error('expected a limb');
    const east: Vec3 = [-Math.sin(134.6885 * RAD), Math.cos(134.6885 * RAD), 0];
    expect(positionAngle(moon, limb, east)).toBeCloseTo(285.0, 1);
  });

  /*
   * astronomy-engine's topocentric places and lit share: another theory of the moon, other refraction. The angle from the
   * zenith over the west by its tangent, as in the textbooks, not by our vectors.
   */
  const tolverby: readonly [number, number] = [18.1734, 50.9287];
  test.each([
    ['2026-04-20T18:40:00Z', 'a thin crescent at dusk'],
    ['2026-09-18T18:30:00Z', 'near the first quarter, low in the south'],
    ['2026-10-25T20:00:00Z', 'gibbous at night, the sun far under'],
    ['2026-10-04T08:00:00Z', 'a waning one by day'],
    ['2026-06-08T01:30:00Z', 'the last quarter before dawn'],
  ])('[F1081] as astronomy-engine has it, to a degree: %s, %s', (at) => {
    const date = new Date(at);
    const observer = new Observer(tolverby[1], tolverby[0], 0);
    const horizontal = (body: Body) => {
      const { ra, dec } = Equator(body, date, observer, true, true);
      return Horizon(date, observer, ra, dec, 'normal');
    };
    const [sun, moon] = [horizontal(Body.Sun), horizontal(Body.Moon)];
    const apart = (sun.azimuth - moon.azimuth) * RAD;
    const angle =
      (Math.atan2(
        Math.cos(sun.altitude * RAD) * Math.sin(apart),
        Math.sin(sun.altitude * RAD) * Math.cos(moon.altitude * RAD) -
          Math.cos(sun.altitude * RAD) * Math.sin(moon.altitude * RAD) * Math.cos(apart),
      ) /
        RAD +
        360) %
      360;
    const ours = sunAt(tolverby, date.getTime());
    const sunThere = directionOf(ours.azimuth, ours.altitude);
    const { direction, lightFrom, lit } = moonInPicture(tolverby, date.getTime(), sunThere);
    const limb = brightLimb(direction, sunThere);
    if (!limb) throw new Error('expected a limb');
    // Right of the moon is where azimuths grow.
    const [x, y] = direction;
    const right: Vec3 = [y / Math.hypot(x, y), -x / Math.hypot(x, y), 0];
    const off = Math.abs(((positionAngle(direction, limb, right) - angle + 540) % 360) - 180);
    expect(off).toBeLessThan(1);
    expect(Math.abs(lit - Illumination(Body.Moon, date).phase_fraction)).toBeLessThan(0.01);
    // What is seen lit is that share: the light's direction has it along the line of sight.
    expect((1 - dot(lightFrom, direction)) / 2).toBeCloseTo(lit, 9);
    expect(Math.hypot(...lightFrom)).toBeCloseTo(1, 9);
  });

  test('[F1082] arguable: an old moon before sunrise is lit from below on the left, a young one after sunset from below on the right', () => {
    // Northern: the old moon stands to the right of and above where the sun will rise, the young one to the left of where it has set.
    const before = brightLimb(directionOf(110, 20), directionOf(85, -6));
    const after = brightLimb(directionOf(250, 20), directionOf(275, -6));
    expect(before?.[2]).toBeLessThan(0);
    expect(after?.[2]).toBeLessThan(0);
    // Eastwards of a moon in the east-south-east is left of it; westwards of one in the west-south-west right.
    expect(before?.[1]).toBeGreaterThan(0);
    expect(after?.[1]).toBeGreaterThan(0);
  });

  test('[F1083] arguable: exactly full or new there is no limb to turn, and nothing is NaN', () => {
    const east = directionOf(90, 0);
    const west = east.map((c) => -c) as unknown as Vec3;
    expect(brightLimb(east, west)).toBeNull();
    expect(moonlightFrom(east, west, 1)).toEqual(west);
    expect(moonlightFrom(east, east, 0)).toEqual(east);
  });
});
