import { expect, test } from 'vitest';
import { expectedFlows } from '../../../src/figures/trip/expected-flows';
import { contentsOf, plainSubject } from '../../support/contents';
import { arrivalOf24, madeFlight, madeRunway } from '../../support/made-flights';

const flights = (count: number, days: number) =>
  Array.from({ length: count }, (_, i) =>
    madeFlight(
      `a${i}`,
      arrivalOf24({ glide: 3, crossing: 20, speed: 66, offset: 0, rolling: 5, noise: 0.5, seed: i + 1 }),
      true,
      Date.UTC(2025, 5, 1 + (i % days), 10),
    ),
  );
const on = (count: number, days: number, month: number) => {
  const contents = contentsOf([madeRunway.feature, ...flights(count, days)], {
    subjects: [plainSubject],
    site: { reference: [18.16, 50.92], timeZone: 'UTC' },
  });
  const from = Date.UTC(2026, month, 21);
  return expectedFlows(contents, { from, to: from + 86_400_000 }, null);
};

test('[F768] a field without a record of winds is expected to be flown as it was recorded', () => {
  const { from, flows } = on(20, 10, 5);
  expect(from).toBe('flights');
  expect(flows.map(({ spans }) => spans[0]?.arrivals)).toEqual([[{ runway: 'r1', end: 1 }]]);
  expect(flows[0]?.share(Date.UTC(2026, 5, 21, 3))).toBe(1);
});

test('[F768] flights of June say nothing of December, and nineteen nothing of June', () => {
  expect(on(20, 10, 11).from).toBe('assumed');
  expect(on(19, 10, 5).from).toBe('assumed');
});
