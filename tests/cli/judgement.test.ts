import { describe, expect, test } from 'vitest';
import { readArguments } from '../../src/cli/arguments';
import { figuresJson } from '../../src/cli/figures-json';
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
    const { spots } = figuresJson(contents(), [], at, { settings: null, lenses: true });
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
    const { spots } = figuresJson(contents(), [], at);
    expect(spots[0]?.paths[0]?.best).not.toHaveProperty('lenses');
  });
});
