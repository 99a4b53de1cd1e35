import { expect, test } from 'vitest';
import { flownOnMap } from '../../../src/ui/light/flown-on-map';
import { contentsOf, runwayFeature } from '../../support/contents';

const band = (kind: string, offsets: readonly unknown[]) => ({
  kind,
  flights: 12,
  from: 0,
  step: 100,
  height: offsets.map(() => [10, 12, 14]),
  offset: offsets,
});
const three = [-3, 0, 3];
const runways = (...flown: readonly unknown[]) =>
  contentsOf([
    runwayFeature('r', [8.01, 50.02], [8.03, 50.03], [{ designator: '06', flown }, { designator: '24' }]),
  ]).runways;
const path = (kind: 'arrival' | 'departure', end: 0 | 1 | null) => ({ ref: { kind, runway: 'r', end } });

test('[U20] the legend has the band while the map has it: of a path that is drawn, and of its kind', () => {
  const flown = runways(band('arrival', [three, three]));
  expect(flownOnMap(flown, [path('departure', 0), path('arrival', 0)])).toBe(true);
  expect(flownOnMap(flown, [path('departure', 0)])).toBe(false);
  expect(flownOnMap(flown, [path('arrival', 1), path('arrival', null)])).toBe(false);
});

test('[U20] heights alone, as on a curved path, make no band on the map', () => {
  expect(flownOnMap(runways(band('arrival', [null, three, null])), [path('arrival', 0)])).toBe(false);
});
