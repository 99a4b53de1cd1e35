import { describe, expect, test } from 'vitest';
import { destination } from '../../../../src/figures/geometry/earth';
import { flowFor } from '../../../../src/figures/traffic/flow/flow-for';
import { readWindGroup } from '../../../../src/figures/traffic/wind/wind-group';
import { contentsOf, plainSubject, runwayFeature } from '../../../support/contents';

type Properties = Record<string, unknown>;
const from = [8.5, 47.4] as const;

/** A runway through a place: its first end looks along `bearing` (degrees true). */
function strip(id: string, bearing: number, length: number, ends: readonly [Properties, Properties]) {
  return runwayFeature(id, from, destination(from, bearing, length), ends);
}
const main = strip('main', 72, 2500, [{ designator: '07' }, { designator: '25' }]);
const cross = strip('cross', 140, 1600, [{ designator: '14' }, { designator: '32' }]);
const ref = (runway: string, end: 0 | 1) => ({ runway, end });
const use = (name: string, end: 0 | 1, more: Properties = {}) => ({
  name,
  arrivals: [ref('main', end)],
  departures: [ref('main', end)],
  ...more,
});

function flow(
  group: string,
  features: readonly unknown[],
  sunside: Properties = {},
  at = '2026-06-21T10:00:00Z',
) {
  const wind = readWindGroup(group);
  if (!wind.ok) throw new Error(wind.reason);
  const contents = contentsOf(features, { subjects: [plainSubject], ...sunside });
  const { arrivals, departures, configuration, reason, ends } = flowFor(contents, wind.value, Date.parse(at));
  const names = (refs: readonly { runway: string; end: 0 | 1 }[]) => refs.map((r) => `${r.runway}${r.end}`);
  return { arrivals: names(arrivals), departures: names(departures), configuration, reason, ends };
}
const both = (...names: readonly string[]) => ({ arrivals: names, departures: names });

describe('flow without configurations', () => {
  test('[F206] the longest runway’s end of more headwind, by true bearing; the cross runway where its limits fail', () => {
    expect(flow('24015KT', [main, cross])).toMatchObject({ ...both('main1'), configuration: null });
    expect(flow('13015KT', [main, cross])).toMatchObject(both('main0'));
    expect(flow('15025KT', [main, cross])).toMatchObject(both('cross0'));
    expect(flow('24015KT', [main, cross]).reason).toMatch(
      /^Most headwind on 07\/25, the longest runway that serves: 25 \(14\.\d kt of headwind/,
    );
  });

  test('[F207] parallel runways and a straight crosswind are ties, given as both', () => {
    const beside = runwayFeature('left', [8.5, 47.41], destination([8.5, 47.41], 72, 2500), [{}, {}]);
    expect(flow('24015KT', [main, beside])).toMatchObject(both('main1', 'left1'));
    expect(flow('16210KT', [main])).toMatchObject(both('main0', 'main1'));
  });

  test('[F208] calm and variable: either end, and so under 5 kt whatever the direction', () => {
    expect(flow('00000KT', [main])).toMatchObject(both('main0', 'main1'));
    expect(flow('VRB03KT', [main])).toMatchObject(both('main0', 'main1'));
    expect(flow('24003KT', [main])).toMatchObject(both('main0', 'main1'));
    expect(flow('24003KT', [main]).reason).toMatch(/3 kt of wind count as calm .*: either end of 07\/25/);
    expect(flow('00000KT', [main]).ends.map((e) => e.components)).toEqual(
      Array(2).fill({ headwindKt: 0, crosswindKt: 0 }),
    );
    expect(flow('VRB03KT', [main]).ends.map((e) => e.components)).toEqual([null, null]);
  });

  test('[F209] closed ends never; nothing is offered to a subject whose run is longer', () => {
    const closed = strip('main', 72, 2500, [{ designator: '07' }, { designator: '25', closed: true }]);
    expect(flow('24015KT', [closed])).toMatchObject(both('main0'));
    expect(flow('24015KT', [closed]).reason).toMatch(/25 is closed/);
    // Ground run 1500 m, landing run 900 m, on 1600 m of which 14 lands on 650 m only.
    const short = strip('cross', 140, 1600, [{ designator: '14', displaced: 950 }, { designator: '32' }]);
    expect(flow('14015KT', [short])).toMatchObject(both());
    expect(flow('14015KT', [short]).reason).toMatch(
      /32 has 15 kt of tailwind, 14 is too short for Plain to land \(650 m of 1,191 m\)/,
    );
    const long = { subjects: [{ ...plainSubject, groundRun: 1700 }] };
    const reason = flow('14015KT', [cross], long).reason;
    expect(reason).toMatch(/14 is too short for Plain to take off \(1,600 m of 1,700 m\)/);
    expect(reason).not.toMatch(/to land/);
    const stub = strip('stub', 72, 800, [{ designator: '07' }, { designator: '25' }]);
    expect(flow('24015KT', [stub])).toMatchObject(both());
    expect(flow('24015KT', [])).toMatchObject({
      ...both(),
      reason: expect.stringMatching(/no runway/) as string,
    });
  });
});

describe('flow by configurations', () => {
  const configurations = [use('West', 1), use('East', 0)];
  const named = { flow: { configurations, calm: 'East' } };

  test('[F210] the first whose limits hold: 5 kt of tailwind and 15 of crosswind unless set', () => {
    const sunside = { flow: { configurations } };
    expect(flow('24015KT', [main], sunside)).toMatchObject({ ...both('main1'), configuration: 0 });
    // 4.9 kt of tailwind on 25 are let pass, 5.1 are not.
    expect(flow('07205KT', [main], sunside)).toMatchObject({ configuration: 0 });
    expect(flow('07206KT', [main], sunside)).toMatchObject({ configuration: 1 });
    expect(flow('07206KT', [main], sunside).reason).toMatch(
      /"West" is passed over: 25 has 6 kt of tailwind, more than 5 kt/,
    );
    const set = { flow: { configurations: [use('West', 1, { maxTailwindKt: 10 }), use('East', 0)] } };
    expect(flow('07206KT', [main], set)).toMatchObject({ configuration: 0 });
  });

  test('[F211] gusts count, at the mean direction', () => {
    const sunside = { flow: { configurations } };
    expect(flow('16212KT', [main], sunside)).toMatchObject({ configuration: 0 });
    const gusty = flow('16212G22KT', [main], sunside);
    // Neither holds: what is left is the headwind, and that is a tie.
    expect(gusty).toMatchObject({ ...both('main0', 'main1'), configuration: null });
    expect(gusty.reason).toMatch(
      /^No configuration is within its limits: the ends named are by wind and runways alone, to be checked; Beyond the limits of every runway: most headwind/,
    );
    expect(gusty.reason).toMatch(/25 has 22 kt of crosswind in the gusts, more than 15 kt/);
  });

  test('[F212] below 5 kt or variable: the one named for calm wind', () => {
    expect(flow('24004KT', [main], named)).toMatchObject({ configuration: 1 });
    expect(flow('24005KT', [main], named)).toMatchObject({ configuration: 0 });
    expect(flow('00000KT', [main], named)).toMatchObject({ configuration: 1 });
    expect(flow('VRB12KT', [main], named)).toMatchObject({ configuration: 1 });
    expect(flow('VRB03KT', [main], named).reason).toMatch(/variable at 3 kt: "East" is named for it/);
    const byPlace = { flow: { configurations, calm: 1 } };
    expect(flow('24004KT', [main], byPlace)).toMatchObject({ configuration: 1 });
    const wrong = contentsOf([main], { flow: { configurations, calm: 'South' } });
    expect(wrong.calm).toBe(null);
    expect(wrong.problems.map((p) => p.reason)).toContainEqual(
      expect.stringMatching(/no configuration "South"/),
    );
  });

  test('[F213] a wind without direction and no calm configuration: limits must hold from anywhere', () => {
    const wide = { maxTailwindKt: 30, maxCrosswindKt: 30 };
    const sunside = { flow: { configurations: [use('West', 1), use('East', 0, wide)] } };
    expect(flow('VRB04KT', [main], sunside)).toMatchObject({ configuration: 0 });
    expect(flow('VRB12KT', [main], sunside)).toMatchObject({ configuration: 1 });
    const narrow = flow('VRB12KT', [main], { flow: { configurations } });
    expect(narrow).toMatchObject({ configuration: 0 });
    expect(narrow.reason).toMatch(/no limits can be checked/);
  });

  test('[F214] hours in the local time of the site, over midnight and across the changing of clocks', () => {
    const night = { flow: { configurations: [use('Night', 0, { hours: '22:00-06:00' }), use('Day', 1)] } };
    const zoned = { ...night, site: { timeZone: 'Europe/Zurich' } };
    const at = (instant: string) => flow('24006KT', [main], zoned, instant).configuration;
    // 24006KT breaks Night's tailwind limit.
    expect(at('2026-06-21T23:00:00Z')).toBe(1);
    const still = (instant: string) => flow('16203KT', [main], zoned, instant).configuration;
    expect(still('2026-06-21T19:59:00Z')).toBe(1);
    expect(still('2026-06-21T20:00:00Z')).toBe(0);
    expect(still('2026-06-22T03:59:59Z')).toBe(0);
    expect(still('2026-06-22T04:00:00Z')).toBe(1);
    expect(still('2026-12-21T20:30:00Z')).toBe(1);
    expect(still('2026-12-21T21:00:00Z')).toBe(0);
    const odd = { flow: { configurations: [use('Odd', 1, { hours: 'weekdays' })] } };
    expect(flow('24006KT', [main], odd).reason).toMatch(/its hours "weekdays" cannot be read/);
  });

  test('[F215] mixed use: arrivals on one runway, departures on another, every end within limits', () => {
    const mixed = {
      flow: {
        configurations: [
          { name: 'Mixed', arrivals: [ref('main', 1)], departures: [ref('cross', 1)] },
          { name: 'East', arrivals: [ref('main', 0)], departures: [ref('main', 0)] },
        ],
      },
    };
    expect(flow('29010KT', [main, cross], mixed)).toMatchObject({
      arrivals: ['main1'],
      departures: ['cross1'],
    });
    const south = flow('16010KT', [main, cross], mixed);
    expect(south).toMatchObject(both('main0'));
    expect(south.reason).toMatch(/"Mixed" is passed over: 32 has 9\.\d kt of tailwind/);
  });

  test('[F216] a configuration without an end that can be used is passed over, one with some serves those', () => {
    const closed = strip('main', 72, 2500, [{ designator: '07', closed: true }, { designator: '25' }]);
    const sunside = {
      flow: {
        calm: 'East',
        configurations: [
          use('East', 0),
          { name: 'Both', arrivals: [ref('main', 0), ref('main', 1)], departures: [ref('main', 1)] },
        ],
      },
    };
    const answer = flow('00000KT', [closed], sunside);
    expect(answer).toMatchObject({ ...both('main1'), configuration: 1 });
    expect(answer.reason).toMatch(/"East" is passed over: 07 is closed/);
    const empty = { flow: { configurations: [{ name: 'Nothing' }] } };
    expect(flow('24015KT', [main], empty)).toMatchObject({ ...both('main1'), configuration: null });
  });
});
