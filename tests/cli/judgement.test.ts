import { describe, expect, test } from 'vitest';
import { readArguments } from '../../src/cli/arguments';
import { figuresJson } from '../../src/cli/figures-json';
import { readSky, underSky } from '../../src/cli/given-sky';
import { contentsOf, plainKit, plainSubject, runwayFeature, spotFeature } from '../support/contents';

const at = Date.parse('2026-06-21T15:00:00Z');
const lenses = [
  { key: 'prime', shortest: 500, longest: 500, widestAperture: 4, extenders: [1.4] },
  { key: 'zoom', shortest: 100, longest: 400, widestAperture: 4.5, widestApertureLong: 5.6 },
];
const features = [
  runwayFeature('rwy', [8.5, 47.4], [8.535, 47.4], [{ designator: '09' }, { designator: '27' }]),
  spotFeature('s', [8.51, 47.396]),
];
const contents = (more: object = {}) =>
  contentsOf(features, {
    site: { elevation: 430, timeZone: 'Europe/Zurich' },
    subjects: [plainSubject],
    kit: { ...plainKit, lenses },
    ...more,
  });

describe('what --lenses adds', () => {
  test('[F616] one verdict a lens in the order of the kit, at every sample', () => {
    const read = readArguments(['x.geojson', '--lenses'], at);
    expect(read.ok && read.value.lenses).toBe(true);
    const { spots } = figuresJson(contents(), [], at, null, { settings: null, lenses: true });
    const samples = spots.flatMap((s) => s.paths.flatMap((p) => [p.closest, p.best]));
    expect(samples.length).toBeGreaterThan(6);
    for (const { focalLength, lenses: told } of samples) {
      expect(told?.map(({ key }) => key)).toEqual(['prime', 'zoom']);
      for (const verdict of told ?? []) {
        expect(Object.keys(verdict)).toEqual(
          'key extender focalLength widestAperture fillAt verdict'.split(' '),
        );
        expect(verdict.fillAt).toBeCloseTo((0.8 * verdict.focalLength) / (focalLength ?? NaN), 9);
      }
    }
  });

  test('[F617] without it nothing of the kind stands there', () => {
    const { spots } = figuresJson(contents(), [], at, null);
    expect(spots[0]?.paths[0]?.best).not.toHaveProperty('lenses');
  });
});

describe('the sky of the command', () => {
  const none = { settings: null, lenses: false };
  const given = (text: string) => {
    const read = readSky(text);
    if (!read.ok) throw new Error(read.reason);
    return read.value;
  };
  const skyOf = (looked: ReturnType<typeof contents>) =>
    figuresJson(looked, [], at, null, none).spots[0]?.sky;
  const overcast = { direct: 0, visibility: 4000 };

  test('[F671] stands with every spot: without any word it is clear, 10 km', () => {
    expect(skyOf(contents())).toEqual({ direct: 1, visibility: 10_000 });
    expect(Object.keys(figuresJson(contents(), [], at, null, none).spots[0] ?? {})).toEqual(
      'id name sun sky runways paths'.split(' '),
    );
  });

  test('[F672] --sky goes before --metar, and that before the survey; each only for what it says', () => {
    const typed = contents({ sky: [{ date: '2026-06-21', direct: 0.8, visibility: 7000 }] });
    expect(skyOf(typed)).toEqual({ direct: 0.8, visibility: 7000 });
    expect(skyOf(underSky(typed, null, overcast, at, null))).toEqual(overcast);
    expect(skyOf(underSky(typed, given('0.5'), overcast, at, null))).toEqual({
      direct: 0.5,
      visibility: 4000,
    });
    expect(skyOf(underSky(typed, given('0.5,900'), overcast, at, null))).toEqual({
      direct: 0.5,
      visibility: 900,
    });
    expect(skyOf(underSky(typed, given('overcast'), null, at, null))).toEqual({
      direct: 0,
      visibility: 7000,
    });
    expect(skyOf(underSky(typed, given('heavy'), null, at, null))?.direct).toBe(0);
    expect(skyOf(underSky(typed, given('hazy'), null, at, null))?.direct).toBe(0.8);
  });

  test('[F673] under overcast nothing glares and the score goes by flat light, whichever the side', () => {
    const { spots } = figuresJson(underSky(contents(), given('0,3000'), null, at, null), [], at, null, none);
    for (const { best, glareShare } of spots[0]?.paths ?? []) {
      expect(best.score.light).toBeCloseTo(0.7, 9);
      expect(best.glare).toBe(false);
      expect(glareShare ?? 0).toBe(0);
    }
  });

  test('[F674] every path has its pass, beside closest and best', () => {
    const [path] = figuresJson(contents(), [], at, null, none).spots[0]?.paths ?? [];
    expect(Object.keys(path ?? {})).toEqual(
      'path closest best pass visibleShare glareShare hidden'.split(' '),
    );
    expect(path?.pass?.aspect).toBeGreaterThanOrEqual(30);
  });
});
