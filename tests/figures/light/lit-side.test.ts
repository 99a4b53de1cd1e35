import { describe, expect, test } from 'vitest';
import { destination } from '../../../src/figures/geometry/earth';
import { litSide, litSpans } from '../../../src/figures/light/lit-side';
import { sunAt } from '../../../src/figures/light/sun';
import type { Runway } from '../../../src/survey/schema/runway';
import { contentsOf, runwayFeature } from '../../support/contents';

function runwayAt(lng: number, lat: number, bearing: number, length = 1800): Runway {
  const a = [lng, lat] as const;
  const [runway] = contentsOf([runwayFeature('rwy', a, destination(a, bearing, length), [{}, {}])]).runways;
  if (!runway) throw new Error('expected a runway');
  return runway;
}
const at = (iso: string) => Date.parse(iso);
const hour = 3_600_000;

/** East-west runways in Switzerland and near Sydney; solar noon is at about 11:25 and 01:55 UTC. */
const north = runwayAt(8.55, 47.46, 95);
const south = runwayAt(151.18, -33.95, 95);

describe('the lit side of a runway', () => {
  test('[F80] is the one towards the sun: south in the north, north in the south', () => {
    expect(litSide(north, at('2026-03-20T11:30Z'))).toMatchObject({ side: 'south', why: 'lit' });
    expect(litSide(south, at('2026-03-20T02:00Z'))).toMatchObject({ side: 'north', why: 'lit' });
    const turned = runwayAt(8.55, 47.46, 275);
    expect(litSide(turned, at('2026-03-20T11:30Z'))).toMatchObject({ side: 'south', why: 'lit' });
  });

  test('[F81] a north-south runway changes over at noon', () => {
    const runway = runwayAt(8.55, 47.46, 10);
    expect(litSide(runway, at('2026-06-21T08:00Z'))?.side).toBe('east');
    expect(litSide(runway, at('2026-06-21T15:00Z'))?.side).toBe('west');
  });

  test('[F82] none when the sun is down or shines along the runway', () => {
    expect(litSide(north, at('2026-03-20T23:00Z'))).toMatchObject({ side: null, why: 'sun-down' });
    const { azimuth } = sunAt([8.55, 47.46], at('2026-03-20T08:00Z'));
    for (const [off, side] of [
      [4, null],
      [-4, null],
      [12, 'south'],
      [-12, 'north'],
    ] as const) {
      // The sun `off` degrees to the right of the direction of the runway, 16 degrees up.
      const answer = litSide(runwayAt(8.55, 47.46, azimuth - off), at('2026-03-20T08:00Z'));
      expect(answer?.why, String(off)).toBe(side === null ? 'along-runway' : 'lit');
      if (side !== null) expect(answer?.side).toContain(side);
    }
  });

  test('[F83] a runway without direction has no sides', () => {
    expect(litSide(runwayAt(8.55, 47.46, 10, 0), at('2026-06-21T08:00Z'))).toBeNull();
  });

  test('[F84] the stretches of a day: a north-south runway is lit from the east, then from the west', () => {
    const runway = runwayAt(8.55, 47.46, 10);
    const from = at('2026-06-21T00:00+02:00');
    const spans = litSpans(runway, from, from + 24 * hour);
    expect(spans.map((s) => s.side)).toEqual(['east', 'west']);
    const [morning, evening] = spans;
    // Sunrise and sunset of that day, by the almanac's rule, to the minute.
    expect(morning?.from).toBeGreaterThan(at('2026-06-21T05:25+02:00'));
    expect(morning?.from).toBeLessThan(at('2026-06-21T05:35+02:00'));
    expect(evening?.to).toBeGreaterThan(at('2026-06-21T21:20+02:00'));
    expect(evening?.to).toBeLessThan(at('2026-06-21T21:30+02:00'));
    // At the ends of the stretches the normal's dot product with the sun is 0.1.
    for (const instant of [morning?.to ?? NaN, evening?.from ?? NaN]) {
      const sun = sunAt([8.55, 47.46], instant);
      const dot = Math.cos((sun.altitude * Math.PI) / 180) * Math.sin(((sun.azimuth - 10) * Math.PI) / 180);
      expect(Math.abs(dot)).toBeCloseTo(0.1, 3);
    }
    expect(evening?.from).toBeGreaterThan(morning?.to ?? NaN);
  });

  test('[F85] in midsummer the sun comes round: both sides of an east-west runway get light', () => {
    const from = at('2026-06-21T00:00+02:00');
    expect(litSpans(north, from, from + 24 * hour).map((s) => s.side)).toEqual(['north', 'south', 'north']);
    const winter = at('2026-12-21T00:00+01:00');
    expect(litSpans(north, winter, winter + 24 * hour).map((s) => s.side)).toEqual(['south']);
  });

  test('[F86] polar day has stretches round the clock, polar night none', () => {
    const svalbard = runwayAt(15.47, 78.246, 280);
    const summer = at('2026-06-21T00:00Z');
    const spans = litSpans(svalbard, summer, summer + 24 * hour);
    expect(spans[0]?.from).toBe(summer);
    expect(spans.at(-1)?.to).toBe(summer + 24 * hour);
    expect(new Set(spans.map((s) => s.side))).toEqual(new Set(['north', 'south']));
    const lit = spans.reduce((sum, s) => sum + s.to - s.from, 0);
    expect(lit / hour).toBeGreaterThan(20);
    const winter = at('2026-12-21T00:00Z');
    expect(litSpans(svalbard, winter, winter + 24 * hour)).toEqual([]);
  });
});
