import { describe, expect, test } from 'vitest';
import type { ElevationGrid } from '../../src/figures/sight/terrain';
import type { PathRef, Sample } from '../../src/figures/types';
import { FlownAnswers } from '../../src/state/flown-answers.svelte';
import type { Contents } from '../../src/survey/contents';
import { contentsOf, runwayFeature } from '../support/contents';
import { arrivalOf24, madeFlight, madeRunway } from '../support/made-flights';

/** Ground that rises as the runway does, 6 m over its 2,400 m along 067: linear, so that a grid says it exactly. */
const metres = { lng: 70_300, lat: 111_250 };
const groundAt = (lng: number, lat: number) => {
  const [east, north] = [(lng - madeRunway.a[0]) * metres.lng, (lat - madeRunway.a[1]) * metres.lat] as const;
  const bearing = (madeRunway.bearing * Math.PI) / 180;
  return 180 + (6 / 2400) * (east * Math.sin(bearing) + north * Math.cos(bearing));
};
const [west, north, step] = [18.05, 51, 0.01] as const;
const hillside: ElevationGrid = {
  ...{ columns: 31, rows: 16, west, north, stepLng: step, stepLat: step },
  heights: Float32Array.from({ length: 31 * 16 }, (_, i) =>
    groundAt(west + (i % 31) * step, north - Math.floor(i / 31) * step),
  ),
};

const flown = [
  {
    ...{ kind: 'departure', flights: 12, from: 1000, step: 500 },
    height: [
      [40, 50, 60],
      [90, 100, 110],
    ],
    offset: [null, null],
  },
];
const landing = madeFlight(
  'landing',
  arrivalOf24({ glide: 3.4, crossing: 21, speed: 66, offset: 0, rolling: 5, noise: 0, seed: 1 }),
);
/** The same field with its ends' heights stated, or left to the terrain. */
const field = (heights: readonly [number, number] | null) =>
  contentsOf(
    [
      runwayFeature('r1', madeRunway.a, madeRunway.b, [
        { designator: '06', ...(heights && { elevation: heights[0] }) },
        { designator: '24', displaced: 300, flown, ...(heights && { elevation: heights[1] }) },
      ]),
      landing,
    ],
    { site: { reference: madeRunway.a } },
  );

const ref: PathRef = { path: 'r1/24/departure', runway: 'r1', end: 1, kind: 'departure' };
const answersOf = (contents: Contents, terrain: ElevationGrid | null) =>
  new FlownAnswers({
    contents,
    terrain,
    sights: { paths: [{ ref }], selected: null },
    flow: { inUse: { arrivals: [{ runway: 'r1', end: 0 }], departures: [] } },
  } as unknown as ConstructorParameters<typeof FlownAnswers>[0]);
/** What is asked brings what answers it: until then there is none. */
async function told<T>(ask: () => T, isThere: (answer: T) => boolean): Promise<T> {
  await import('../../src/state/flown-tools');
  for (let turn = 0; turn < 50 && !isThere(ask()); turn++) await Promise.resolve();
  return ask();
}

describe('recorded flights at a field that states no heights, on terrain', () => {
  const silent = answersOf(field(null), hillside);
  const stated = answersOf(field([180, 186]), null);

  test('[F1351] one to an end that is not in use is passed over, as where the heights are stated', async () => {
    const of = (answers: FlownAnswers) =>
      told(
        () => answers.passedOver(),
        (set) => set.size > 0,
      );
    expect([...(await of(stated))]).toEqual(['landing']);
    expect([...(await of(silent))]).toEqual(['landing']);
  });

  test('[F1352] bands of take-offs behind a displaced threshold are counted from the ground that is there', async () => {
    const sample = { station: 1250, height: 70 } as Sample;
    const of = (answers: FlownAnswers) =>
      told(
        () => answers.spreadAt(ref.path, sample),
        (spread) => spread !== null,
      );
    // 75 m half-way between the two medians, above a threshold that lies 0.75 m under the pavement's end.
    expect((await of(stated))?.up[1]).toBeCloseTo(75 - 0.75 - 70, 1);
    expect((await of(silent))?.up[1]).toBeCloseTo(75 - 0.75 - 70, 1);
  });
});
