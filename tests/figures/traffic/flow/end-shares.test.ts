import { describe, expect, test } from 'vitest';
import { destination } from '../../../../src/figures/geometry/earth';
import { byMonth, endShares, expectedHours } from '../../../../src/figures/traffic/flow/end-shares';
import { flowRules } from '../../../../src/figures/traffic/flow/flow-for';
import { Tally } from '../../../../src/imports/wind-record/tally';
import { readContents } from '../../../../src/survey/contents';
import { setWindRecord } from '../../../../src/survey/edits/set-wind-record';
import { saveSurvey } from '../../../../src/survey/save';
import { contentsOf, opened, plainSubject, runwayFeature, surveyText } from '../../../support/contents';

const from = [8.5, 0] as const;
/** On the equator both ends of an east-west line look exactly along it: 090 and 270. */
const main = runwayFeature('main', from, destination(from, 90, 2500), [
  { designator: '09' },
  { designator: '27' },
]);
const use = (name: string, end: 0 | 1, more: object = {}) => ({
  name,
  arrivals: [{ runway: 'main', end }],
  departures: [{ runway: 'main', end }],
  ...more,
});
const rulesOf = (flow: object) => flowRules(contentsOf([main], { subjects: [plainSubject], flow }));
const facts = { source: 'made', from: null, to: null, timeZone: 'UTC', unread: 0 };

/** A small generator of numbers from a seed (mulberry32), so that a history is the same each time. */
function numbers(seed: number) {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

interface Seen {
  readonly at: number;
  readonly direction: number;
  readonly speed: number;
  readonly gust: number | null;
}

/** Winds of a made year: westerly in winter, easterly in summer, a breeze after noon. */
function history(
  count: number,
  speeds: (next: () => number) => readonly [speed: number, gust: number | null],
): Seen[] {
  const next = numbers(4711);
  return Array.from({ length: count }, () => {
    const at = Math.floor(next() * 288);
    const summer = Math.abs(Math.floor(at / 24) - 6) < 3;
    const direction = (Math.round((summer ? 9 : 26) + (next() - 0.5) * 16) * 10 + 360) % 360 || 360;
    const [speed, gust] = speeds(next);
    return { at, direction, speed, gust };
  });
}

/**
 * The rule of the design once more, from its words, for this runway alone: west is preferred with 5 kt of tailwind and
 * 15 kt of crosswind, gusts included, then east with the same; under 5 kt east, which is named for calm; where none
 * holds, the more headwind; either end counts for none. Half past the hour, and west only from 6 to 22.
 */
function expectedEnd({ at, direction, speed, gust }: Seen): 0 | 1 | 'tie' {
  if (speed < 5) return 0;
  const strongest = Math.max(speed, gust ?? 0);
  const angle = ((direction - 270) * Math.PI) / 180;
  const along = strongest * Math.cos(angle);
  const crosswind = Math.abs(strongest * Math.sin(angle));
  const hour = at % 24;
  if (hour >= 6 && hour < 22 && -along <= 5 + 1e-9 && crosswind <= 15 + 1e-9) return 1;
  if (along <= 5 + 1e-9 && crosswind <= 15 + 1e-9) return 0;
  if (Math.abs(speed * Math.cos(angle)) < 0.5) return 'tie';
  return along > 0 ? 1 : 0;
}

function sharesOfHistory(winds: readonly Seen[]) {
  const tally = new Tally();
  for (const { at, direction, speed, gust } of winds)
    tally.add(at, { direction, speedKt: speed, gustKt: gust });
  const rules = rulesOf({
    calm: 'East',
    configurations: [use('West', 1, { hours: '06:00-22:00' }), use('East', 0)],
  });
  return endShares(rules, tally.record(facts));
}

const counted = (shares: ReturnType<typeof endShares>, end: 0 | 1) =>
  shares.ends.find((e) => e.use === 'arrivals' && e.end.ref.end === end)?.counts ?? new Float64Array(288);

describe('how often each end was in use', () => {
  test('[F237] a made history, hour by hour of each month, against the rule computed anew for every observation', () => {
    // One speed for each class of the record: then nothing is lost by counting in classes.
    const exact = [3, 6, 9, 12, 15, 18, 22, 28] as const;
    const winds = history(20_000, (next) => [exact[Math.floor(next() * exact.length)] ?? 3, null]);
    const shares = sharesOfHistory(winds);
    for (const end of [0, 1] as const) {
      const expected = new Float64Array(288);
      for (const wind of winds) {
        const answer = expectedEnd(wind);
        if (answer === end) expected[wind.at] = (expected[wind.at] ?? 0) + 1;
      }
      expect(counted(shares, end)).toEqual(expected);
    }
    expect(shares.observations.reduce((a, b) => a + b, 0)).toBe(20_000);
    const ties = winds.filter((wind) => expectedEnd(wind) === 'tie').length;
    expect(ties).toBeGreaterThan(0);
    expect(shares.undecided.reduce((a, b) => a + b, 0)).toBe(ties);
    // It is no even history: summer and winter differ.
    const [west, all] = [byMonth(counted(shares, 1)), byMonth(shares.observations)];
    expect((west[0] ?? 0) / (all[0] ?? 1)).toBeGreaterThan((west[6] ?? 0) / (all[6] ?? 1) + 0.3);
  });

  test('[F238] speeds and gusts as they come: counting in classes moves no month by more than three percent', () => {
    const winds = history(40_000, (next) => {
      const speed = Math.floor(next() * next() * 30);
      return [speed, next() < 0.2 ? speed + 10 : null];
    });
    const shares = sharesOfHistory(winds);
    const all = byMonth(shares.observations);
    let worst = 0;
    for (const end of [0, 1] as const) {
      const expected = Array<number>(12).fill(0);
      for (const wind of winds) {
        const answer = expectedEnd(wind);
        const month = Math.floor(wind.at / 24);
        if (answer === end) expected[month] = (expected[month] ?? 0) + 1;
      }
      byMonth(counted(shares, end)).forEach(
        (n, month) => (worst = Math.max(worst, Math.abs(n - (expected[month] ?? 0)) / (all[month] ?? 1))),
      );
    }
    console.log(`worst error of a month's share from counting in classes: ${(worst * 100).toFixed(2)} %`);
    expect(worst).toBeGreaterThan(0);
    expect(worst).toBeLessThan(0.03);
  });

  test('[F239] calm and variable winds without a flow for them count for no end; light is weighed by the hour', () => {
    const tally = new Tally();
    for (let i = 0; i < 3; i++) tally.add(5 * 24 + 18, { direction: 270, speedKt: 12, gustKt: null });
    tally.add(5 * 24 + 18, { direction: null, speedKt: 0, gustKt: null });
    tally.add(5 * 24 + 6, { direction: 90, speedKt: 12, gustKt: null });
    const shares = endShares(rulesOf({}), tally.record(facts));
    expect([shares.undecided[5 * 24 + 18], shares.observations[5 * 24 + 18]]).toEqual([1, 4]);
    const west = shares.ends.find((e) => e.use === 'departures' && e.end.ref.end === 1);
    if (!west) throw new Error('expected the west end in use');
    const frontLit = new Float64Array(288);
    frontLit[5 * 24 + 18] = 1;
    frontLit[5 * 24 + 6] = 1;
    frontLit[5 * 24 + 19] = 0.5;
    const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    // June: 3/4 of the hour from 18, nothing at 6, and at 19, where nothing was observed, the month's 3/5 of half an hour.
    const hours = expectedHours(frontLit, west, shares.observations, days);
    expect(hours[5]).toBeCloseTo(30 * (0.75 + 0.6 * 0.5), 9);
    expect(hours[4]).toBe(null);
    const survey = setWindRecord(opened(surveyText([])), tally.record(facts));
    const again = opened(saveSurvey(survey));
    expect(readContents(again).windRecord).toEqual(tally.record(facts));
    expect(readContents(setWindRecord(again, null)).windRecord).toBe(null);
    const broken = readContents(opened(surveyText([], { windRecord: { counts: [[1]] } })));
    expect(broken.windRecord).toBe(null);
    expect(broken.problems[0]?.reason).toMatch(/^sunside\.windRecord: the counts cannot be made out/);
  });
});
