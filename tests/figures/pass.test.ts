import { describe, expect, test } from 'vitest';
import { destination } from '../../src/figures/geometry/earth';
import { outlookOf } from '../../src/figures/outlook';
import { isWorthIt, scoreWord } from '../../src/figures/score-words';
import { Scratch } from '../../src/figures/scratch';
import { spotFigures } from '../../src/figures/spot-figures';
import { inspectPath } from '../../src/figures/spot/inspect-path';
import { betterElsewhere, headlineOf } from '../../src/figures/summary/spot-summary';
import { pathsOf } from '../../src/figures/traffic/paths';
import type { Sample } from '../../src/figures/types';
import { contentsOf, feature, plainKit, plainSubject, runwayFeature, spotFeature } from '../support/contents';

const a = [8.5, 47.4] as const;
const azimuth = 72;
const runway = runwayFeature('rwy', a, destination(a, azimuth, 2400), [
  { designator: '07' },
  { designator: '25' },
]);
const beside = (along: number, off: number) => destination(destination(a, azimuth, along), azimuth + 90, off);
const instants = ['2026-06-21T05:30:00Z', '2026-06-21T17:00:00Z', '2026-09-21T11:00:00Z'].map(Date.parse);

function seenFrom(at: readonly [number, number], more: readonly object[] = [], kit: object = plainKit) {
  const contents = contentsOf([runway, spotFeature('s', at), ...more], {
    site: { elevation: 430 },
    subjects: [plainSubject],
    kit,
  });
  const [spot] = contents.spots;
  if (!spot) throw new Error('expected a spot');
  const outlook = outlookOf(contents, null);
  const paths = pathsOf(contents, (kind) => kind !== 'circuit', null);
  return { outlook, spot, paths, figures: spotFigures(spot, paths, outlook, instants) };
}

/** The rule once more from its words, over every sample. */
function expectedPass(samples: readonly Sample[], usableTo: number): Sample | null {
  let pass: Sample | null = null;
  for (const sample of samples) {
    if (sample.focalLength === null || sample.focalLength > usableTo || sample.score.sight === 0) continue;
    if (sample.aspect === null || sample.aspect < 30 || sample.aspect > 120) continue;
    const better =
      !pass ||
      sample.score.total > pass.score.total ||
      (sample.score.total === pass.score.total && sample.slantRange < pass.slantRange);
    if (better) pass = sample;
  }
  return pass;
}

describe('the pass', () => {
  const wall = feature('wall', 'obstacle', 'LineString', [beside(-250, 200), beside(900, 200)], {
    height: 14,
    sight: 'solid',
  });
  test.each([
    ['beside the threshold', beside(-150, 280), []],
    ['right under the approach', beside(-900, 20), []],
    ['behind a hangar', beside(-150, 280), [wall]],
    ['far out, where the kit ends', beside(700, 800), []],
  ] as const)(
    '[F620] %s: the best of all samples that count, by the rule in its own words',
    (_, at, more) => {
      const { spot, outlook, paths, figures } = seenFrom(at, more);
      const scratch = new Scratch();
      let passes = 0;
      for (const [m, { paths: seen }] of figures.entries())
        for (const [p, path] of paths.entries()) {
          const samples = Array.from(path.samples.station, (station) =>
            inspectPath(spot, path, station, outlook, instants[m] as number, scratch),
          ).slice(0, path.samples.count);
          const expected = expectedPass(samples, outlook.reach.usableTo);
          expect(seen[p]?.pass?.station ?? null, `${path.ref.path} at ${m}`).toBe(expected?.station ?? null);
          expect(seen[p]?.pass?.score.total).toBe(expected?.score.total);
          if (expected) passes++;
        }
      expect(passes).toBeGreaterThan(0);
    },
  );

  test('[F621] the nose-on shot with the long lens from the end of the runway is no pass: it stands second and says where', () => {
    // On the extended centreline, 2.5 km out, the evening sun behind: an arrival flies straight over.
    const { figures } = seenFrom(beside(-60, 12));
    const arrival = figures[1]?.paths.find((p) => p.ref.path === 'rwy/07/arrival');
    expect(arrival?.pass?.aspect).toBeGreaterThanOrEqual(30);
    expect(arrival && headlineOf(arrival)).toBe(arrival?.pass);
  });

  test('[F622] out of the kit’s reach there is no pass; the best leads all the same', () => {
    const wide = { ...plainKit, lenses: [{ key: 'w', shortest: 24, longest: 35, widestAperture: 2.8 }] };
    const { figures } = seenFrom(beside(700, 2100), [], wide);
    for (const path of figures[0]?.paths ?? []) {
      expect(path.pass).toBeNull();
      expect(headlineOf(path)).toBe(path.best);
      expect(betterElsewhere(path)).toBeNull();
    }
  });
});

describe('what a score is called', () => {
  test.each([
    [1, 'good'],
    [0.75, 'good'],
    [0.749, 'fair'],
    [0.6, 'fair'],
    [0.599, 'poor'],
    [0.4, 'poor'],
    [0.399, 'not worth waiting for'],
    [0, 'not worth waiting for'],
  ] as const)('[F623] %s is %s', (total, word) => {
    expect(scoreWord(total)).toBe(word);
    expect(isWorthIt(total)).toBe(word !== 'not worth waiting for');
  });

  test('[F624] a total that was kept with seven figures and meets a threshold holds', () => {
    expect(scoreWord(Math.fround(0.6))).toBe('fair');
    expect(scoreWord(0.3998)).toBe('poor');
  });
});
