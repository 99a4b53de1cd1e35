import { expect, test } from 'vitest';
import { destination } from '../../../../src/figures/geometry/earth';
import { shortEnds } from '../../../../src/figures/traffic/flow/short-ends';
import { contentsOf, plainSubject, runwayFeature } from '../../../support/contents';

const from = [8.5, 47.4] as const;

test('[F229] an end in use is in doubt where the run the subject needs is longer than what it has', () => {
  // 1000 m, of which the first end lands on 800 m: Plain takes off in 1500 m and lands in 900 m.
  const ends = [{ designator: '07', displaced: 200 }, { designator: '25' }] as const;
  const runway = runwayFeature('main', from, destination(from, 72, 1000), ends);
  const contents = contentsOf([runway], { subjects: [plainSubject] });
  const ref = (end: 0 | 1) => ({ runway: 'main', end });
  const rounded = (found: ReturnType<typeof shortEnds>) =>
    found.map(({ use, name, thereM, neededM }) => [use, name, Math.round(thereM), neededM]);
  expect(rounded(shortEnds(contents, { arrivals: [ref(0), ref(1)], departures: [ref(1)] }))).toEqual([
    ['arrivals', '07', 800, 900],
    ['departures', '25', 1000, 1500],
  ]);
  expect(shortEnds(contents, { arrivals: [ref(1)], departures: [] })).toEqual([]);
  expect(shortEnds(contents, { arrivals: [{ runway: 'gone', end: 0 }], departures: [] })).toEqual([]);
});
