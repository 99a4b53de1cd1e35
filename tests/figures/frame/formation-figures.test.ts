import { describe, expect, test } from 'vitest';
import { formationFigures } from '../../../src/figures/frame/formation-figures';
import { destination } from '../../../src/figures/geometry/earth';
import { outlookOf } from '../../../src/figures/outlook';
import { Scratch } from '../../../src/figures/scratch';
import { everyPath } from '../../../src/figures/traffic/every-path';
import { formationAt, formationPlaces } from '../../../src/figures/traffic/formation';
import { contentsOf, feature, plainSubject, runwayFeature, spotFeature } from '../../support/contents';

const eye = [8.5, 47.4] as const;
const noon = Date.parse('2026-06-21T10:00:00Z');
const jet = { ...plainSubject, length: 14, span: 9, height: 4, climbSpeed: 150 };

/** Passed on a line 600 m north, level and at eye height as good as. */
function abeam(properties: object) {
  const middle = destination(eye, 0, 600);
  const line = [destination(middle, 270, 500), destination(middle, 90, 500)];
  const show = { passes: ['level'], height: 0, ...properties };
  const contents = contentsOf(
    [
      spotFeature('s', eye, { ground: 0, eyeHeight: 2 }),
      feature('show', 'display-line', 'LineString', line, show),
    ],
    { subjects: [jet] },
  );
  const [spot] = contents.spots;
  const path = everyPath(contents, (kind) => kind === 'pass', null).find(
    (p) => p.ref.path === 'show/level/forward',
  );
  if (!spot || !path) throw new Error('expected a spot and a path');
  const stations = Array.from(path.samples.station);
  const station = stations.reduce((a, b) => (Math.abs(b - 2500) < Math.abs(a - 2500) ? b : a));
  return formationFigures(
    spot,
    path,
    station,
    contents,
    outlookOf(contents, null),
    noon,
    false,
    new Scratch(),
  );
}

describe('what flies together', () => {
  test('[F1099] a pair abeam: the whole takes its length and the step between them, seen from 600 m', () => {
    const pair = abeam({ aircraft: 2, spacing: 40 });
    // By hand: an echelon to the right is 40 / sqrt 2 = 28.3 m behind, and farther off from the north side's left.
    const step = 40 * Math.SQRT1_2;
    const whole = 7 / 600 + (step + 7) / (600 - step);
    expect(pair?.one).toBeCloseTo((0.8 * 36) / (14 / 600), -1);
    expect(Math.abs(((pair?.all ?? 0) * whole) / ((pair?.one ?? 0) * (14 / 600)) - 1)).toBeLessThan(0.01);
  });

  test('[F1100] arguable: nobody has said how far apart: the whole is not known, one of them is', () => {
    const pair = abeam({ aircraft: 2 });
    expect(pair?.all).toBeNull();
    expect(pair?.one).toBeGreaterThan(100);
    expect(formationPlaces({ aircraft: 2, spacing: null })).toBeNull();
  });

  test('[F1101] arguable: one alone is no formation, however far apart it is said to fly', () => {
    expect(abeam({ aircraft: 1, spacing: 20 })).toBeNull();
  });

  test('[F1102] neighbours are as far apart as is said, an arrowhead of five alike on both sides', () => {
    const places = formationPlaces({ aircraft: 5, spacing: 30 }) ?? [];
    const apart = (a: number, b: number) =>
      Math.hypot(...[0, 1, 2].map((k) => (places[a]?.[k] ?? NaN) - (places[b]?.[k] ?? NaN)));
    for (const [a, b] of [
      [0, 1],
      [0, 2],
      [1, 3],
      [2, 4],
    ] as const)
      expect(apart(a, b)).toBeCloseTo(30, 9);
    expect(places.reduce((sum, [, left]) => sum + left, 0)).toBeCloseTo(0, 9);
    expect(Math.max(...places.map(([ahead]) => ahead))).toBe(0);
  });

  test('[F1103] arguable: a stream is one picture on the run-in, after the break each flies alone', () => {
    const runway = runwayFeature(
      'r',
      eye,
      destination(eye, 90, 2400),
      [{ designator: '09' }, { designator: '27' }],
      {
        patterns: [{ pattern: 'break', end: 0, aircraft: 4, spacing: 30 }],
      },
    );
    const contents = contentsOf([runway], { subjects: [jet] });
    const stream = everyPath(contents, (kind) => kind === 'pattern', null);
    expect(stream).toHaveLength(4);
    const [first, second] = stream;
    if (!first || !second) throw new Error('expected a stream');
    expect(formationAt(first, first.samples.station[10] ?? NaN)).toEqual({ aircraft: 4, spacing: 30 });
    // Between two samples, as a slider stands: the nearer one decides, and no first one stands in for it.
    expect(formationAt(first, (first.samples.station.at(-1) ?? NaN) - 0.01)).toBeNull();
    expect(formationAt(first, first.samples.station.at(-1) ?? NaN)).toBeNull();
    expect(formationAt(second, second.samples.station[10] ?? NaN)).toBeNull();
  });
});
