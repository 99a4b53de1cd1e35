import { expect, test } from 'vitest';
import type { Position } from '../../src/survey/document';
import type { StandingSpot } from '../../src/survey/schema/standing-spot';
import type { WindRecord } from '../../src/survey/schema/wind-record';
import { readRecord, recordLayout } from '../../src/imports/wind-record/read-record';
import { spotThere } from '../../src/figures/spot/spot-there';
import { pastUse, type PastUse } from '../../src/figures/flown/past-use';
import { overYear } from '../../src/sweep/over-year';
import { contentsOf, plainKit, plainSubject, runwayFeature } from '../support/contents';
import { once } from '../support/once';

const place: Position = [8.0247, 50.0171];
const contents = contentsOf(
  [
    runwayFeature(
      'main',
      [8.01, 50.02],
      [8.0305, 50.021],
      [
        // Nothing of it counts in this wind.
        { designator: '08', elevation: 112, closed: true },
        { designator: '26', elevation: 112 },
      ],
    ),
  ],
  {
    subjects: [{ ...plainSubject, groundRun: 1200 }],
    kit: plainKit,
    site: { reference: [8.01, 50.02], timeZone: 'Europe/Berlin' },
  },
);
const at = Date.UTC(2026, 5, 21, 12);
const eye = 113.7;

/** A wind that always blows along 26, two years of it so that every hour of every month has its twenty. */
const winds = (() => {
  const rows = Array.from(
    { length: 730 * 24 },
    (_, h) => `${new Date(Date.UTC(2024, 0, 1, h)).toISOString()},260,12`,
  );
  const text = ['time,direction,speed_kt', ...rows].join('\n');
  const plan = recordLayout(text);
  if (!plan?.unit) throw new Error('expected a plan');
  const steps = readRecord(text, { ...plan, unit: plan.unit }, 'Europe/Berlin', 'winds.csv');
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value.record;
})();

function record(clouds?: (hour: number) => readonly [clear: number, overcast: number]): WindRecord {
  if (!clouds) return winds;
  const counts = Array.from({ length: 288 }, (_, k) => {
    const [clear, overcast] = clouds(k % 24);
    return [clear, 0, 0, 0, overcast];
  });
  return { ...winds, clouds: counts };
}
const year = (told: WindRecord, spot: StandingSpot | null = null, given = contents) =>
  overYear(given, pastUse(given, told, []) as PastUse, [{ position: place, eye, spot }], at, 3600, null);
const june = ({ byHour }: ReturnType<typeof year>) => (byHour[0] ?? []).slice(5 * 24, 6 * 24);
const bare = once(() => year(record()));
const clear = once(() => year(record(() => [40, 0])));
const grey = once(() => june(year(record(() => [0, 40]))));
const total = (hours: readonly number[]) => hours.reduce((a, b) => a + b, 0);

test('[S192] without clouds in the record the sky is clear, and that is said', () => {
  expect([bare().cloud, clear().cloud]).toEqual([false, true]);
  expect(total(june(bare()))).toBeGreaterThan(200);
  expect(june(clear())).toEqual(june(bare()));
});

test('[S193] minutes of full sun and of none are mixed by the share of direct sun, hour by hour', () => {
  const full = june(clear());
  // Flat light is fair at best: some hours are good under a grey sky too, but not the same ones.
  expect(grey()).not.toEqual(full);
  // Three in four mornings are clear, one in four afternoons.
  const mixed = june(year(record((hour) => (hour < 13 ? [30, 10] : [10, 30]))));
  mixed.forEach((minutes, hour) => {
    const direct = hour < 13 ? 0.75 : 0.25;
    expect(minutes).toBeCloseTo(direct * (full[hour] ?? NaN) + (1 - direct) * (grey()[hour] ?? NaN), 9);
  });
});

test('[S194] an hour of few observations of cloud takes its month: one lucky sun at noon says nothing', () => {
  const lucky = june(year(record((hour) => (hour === 12 ? [1, 0] : [0, 40]))));
  // 1 of 921 in the month.
  expect(lucky[12]).toBeCloseTo(((june(clear())[12] ?? NaN) + 920 * (grey()[12] ?? NaN)) / 921, 9);
});

test('[S195] a spot counts only while one may be there: its hours before the field’s, a refusal for good', () => {
  const open = june(year(record(), spotThere(place, null)));
  const evening = { ...spotThere(place, null).access, hours: 'Mo-Su 17:00-20:00' };
  const shut = june(year(record(), { ...spotThere(place, null), access: evening }));
  expect(shut).toEqual(open.map((minutes, hour) => (hour >= 17 && hour < 20 ? minutes : 0)));
  expect(total(shut)).toBeGreaterThan(0);
  const field = { ...contents, rules: { ...contents.rules, hours: 'Mo-Su 06:00-10:00' } };
  expect(total(june(year(record(), null, field)).slice(10))).toBe(0);
  expect(june(year(record(), { ...spotThere(place, null), access: evening }, field))).toEqual(shut);
  const refused = {
    ...evening,
    hours: null,
    permission: {
      askedOn: '2026-01-02',
      answer: 'refused',
      by: null,
      from: null,
      until: null,
      reference: null,
    },
  } as const;
  expect(total(june(year(record(), { ...spotThere(place, null), access: refused })))).toBe(0);
});
