import { expect, test } from 'vitest';
import type { Contents } from '../../src/survey/contents';
import { neededOf } from '../../src/sweep/needed';
import { planSweep, type SweepAsked } from '../../src/sweep/plan';
import { Sweep } from '../../src/sweep/sweep';
import { contentsOf, feature, plainKit, plainSubject, runwayFeature } from '../support/contents';

const flight = (id: string, north: number) =>
  feature(
    id,
    'flight-path',
    'LineString',
    [
      [8.0, north],
      [8.02, north + 0.004],
      [8.03, north + 0.006],
    ],
    { name: id, heights: [300, 250, 200], source: 'drawn' },
  );
const contents: Contents = contentsOf(
  [
    runwayFeature(
      'main',
      [8.01, 50.02],
      [8.0205, 50.024],
      [
        { designator: '06', elevation: 112 },
        { designator: '24', elevation: 112 },
      ],
    ),
    flight('low', 50.018),
    flight('high', 50.03),
  ],
  { subjects: [plainSubject], kit: plainKit, site: { reference: [8.01, 50.02] } },
);
const asking = (names: readonly string[] | null): SweepAsked => ({
  names,
  wind: null,
  configuration: 0,
  at: 0,
  side: 1000,
  cell: 100,
  hours: { from: Date.UTC(2026, 5, 21, 14), to: Date.UTC(2026, 5, 21, 16) },
  step: 3600,
});

/** All figures of a question, as a worker works them out that has been handed `given`. */
function answer(given: Contents, asked: SweepAsked) {
  const planned = planSweep(given, asked, null);
  if (!planned.ok) throw new Error(planned.reason);
  const cells = Int32Array.from({ length: planned.plan.area.count ** 2 }, (_, i) => i);
  return new Sweep(given, planned.plan, null).figuresOf(cells);
}

test('[S369] of what workers are not handed no answer hangs, whatever paths are named', () => {
  for (const names of [['main/24/arrival'], ['low'], ['main/06/departure', 'high', 'low']]) {
    const asked = asking(names);
    const needed = neededOf(contents, asked);
    expect(answer(needed, asked)).toEqual(answer(contents, asked));
    expect(needed.flightPaths.map(({ id }) => id)).toEqual(
      ['low', 'high'].filter((id) => names.includes(id)),
    );
  }
});

test('[S370] it is the same object while survey and flights named are the same, and all of it where no names decide', () => {
  expect(neededOf(contents, asking(['main/24/arrival']))).toBe(
    neededOf(contents, asking(['main/06/arrival'])),
  );
  expect(neededOf(contents, asking(null))).toBe(contents);
});
