import { describe, expect, test } from 'vitest';
import { destination } from '../../../../src/figures/geometry/earth';
import { flowRules } from '../../../../src/figures/traffic/flow/flow-for';
import { flowHours } from '../../../../src/figures/traffic/flow/flow-hours';
import { turningOf } from '../../../../src/figures/traffic/flow/turning';
import { readWeather } from '../../../../src/figures/traffic/wind/read-weather';
import { weatherMember } from '../../../../src/figures/traffic/wind/weather-member';
import type { Wind } from '../../../../src/figures/traffic/wind/wind';
import { contentsOf, plainSubject, runwayFeature } from '../../../support/contents';

const from = [8.5, 0] as const;
/** On the equator both ends of an east-west line look exactly along it: 090 and 270. */
const main = runwayFeature('main', from, destination(from, 90, 2500), [
  { designator: '09' },
  { designator: '27' },
]);
const use = (name: string, end: 0 | 1) => ({
  name,
  arrivals: [{ runway: 'main', end }],
  departures: [{ runway: 'main', end }],
});
const contents = (flow: object = {}) => contentsOf([main], { subjects: [plainSubject], flow });
const wind = (direction: number | null, speedKt: number, gustKt: number | null = null): Wind => ({
  from: direction,
  speedKt,
  gustKt,
  varies: null,
});

describe('how near the flow is to turning', () => {
  test('[F225] by the headwind alone: where it has become a tailwind', () => {
    const turning = turningOf(flowRules(contents()), wind(250, 12), 0);
    // 12 kt from 180 or 360 are no headwind for either: 70 degrees back, 110 on. From half a knot on either end will do.
    const either = (Math.asin(0.5 / 12) * 180) / Math.PI;
    expect(Math.abs((turning.backing?.by ?? NaN) - (70 - either))).toBeLessThan(0.1);
    expect(Math.abs((turning.veering?.by ?? NaN) - (110 - either))).toBeLessThan(0.1);
    expect(turning.backing?.arrivals).toEqual([{ runway: 'main', end: 0 }]);
    expect(turning.stronger).toBe(null);
    // Under 5 kt neither end is preferred.
    expect(turning.weaker?.by).toBeCloseTo(7, 0);
    expect(turning.weaker?.arrivals).toHaveLength(2);
  });

  test('[F226] by limits: degrees and knots to the one that breaks', () => {
    const rules = flowRules(contents({ configurations: [use('West', 1), use('East', 0)], calm: 'East' }));
    // 8 kt from 210: tailwind on 27 is 8 cos(angle); 5 kt at 51.3 degrees behind the beam, that is from 128.7.
    const { backing, weaker } = turningOf(rules, wind(210, 8), 0);
    expect(backing?.by).toBeCloseTo(210 - (90 + (Math.acos(5 / 8) * 180) / Math.PI), 0);
    // Below 5 kt the calm-wind flow: 3 kt less.
    expect(weaker?.by).toBeCloseTo(3, 0);
    expect(weaker?.departures).toEqual([{ runway: 'main', end: 0 }]);
  });

  test('[F227] nothing to turn in a wind without direction', () => {
    expect(turningOf(flowRules(contents()), wind(null, 3), 0)).toEqual({
      veering: null,
      backing: null,
      stronger: null,
      weaker: null,
    });
  });

  test('[F228] a forecast hour by hour, cut where its wind changes, with the ends that may come instead', () => {
    const now = Date.parse('2026-11-28T11:00:00Z');
    const text =
      'TAF EPXX 281100Z 2812/2818 25012KT 9999 TEMPO 2813/2814 08015G25KT FM281530 09010KT TEMPO 2816/2817 10012KT';
    const read = readWeather(text, now);
    if (!read.ok) throw new Error(read.reason);
    const hours = flowHours(contents(), weatherMember(text, read.value, null, now));
    const seen = hours.map(({ from: at, choice, others }) => [
      new Date(at).toISOString().slice(11, 16),
      choice.arrivals[0]?.end,
      others.map((o) => o.choice?.arrivals[0]?.end ?? null),
    ]);
    expect(seen).toEqual([
      ['12:00', 1, []],
      ['13:00', 1, [0]],
      ['14:00', 1, []],
      ['15:00', 1, []],
      ['15:30', 0, []],
      ['16:00', 0, [null]],
      ['17:00', 0, []],
    ]);
    expect(hours.at(-1)?.to).toBe(Date.parse('2026-11-28T18:00:00Z'));
  });
});
