import { expect, test } from 'vitest';
import { sunShares } from '../../../../src/figures/traffic/flow/sun-shares';

const empty = () => Array.from({ length: 288 }, () => [0, 0, 0, 0, 0]);
const at = (month: number, hour: number) => month * 24 + hour;

test('[F956] without clouds in the record nothing is known of the sun', () => {
  expect(sunShares({})).toBeNull();
  expect(sunShares({ clouds: empty() })).toBeNull();
});

test('[F956] the mean share of direct sun of an hour; one of few observations takes its month’s, a month of few the year’s', () => {
  const clouds = empty();
  // June, 06 h: half clear, half overcast. June, 12 h: always broken. December: a handful of clear days.
  clouds[at(5, 6)] = [20, 0, 0, 0, 20];
  clouds[at(5, 12)] = [0, 0, 0, 40, 0];
  clouds[at(5, 18)] = [19, 0, 0, 0, 0];
  clouds[at(11, 12)] = [5, 0, 0, 0, 0];
  const shares = sunShares({ clouds });
  expect(shares?.[at(5, 6)]).toBeCloseTo(0.5, 9);
  expect(shares?.[at(5, 12)]).toBeCloseTo(0.35, 9);
  expect(shares?.[at(5, 18)]).toBeCloseTo((20 + 14 + 19) / 99, 9);
  expect(shares?.[at(11, 12)]).toBeCloseTo((20 + 14 + 19 + 5) / 104, 9);
});
