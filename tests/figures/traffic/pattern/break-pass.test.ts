import { describe, expect, test } from 'vitest';
import { figuresFor } from '../../../../src/figures/figures-for';
import { destination } from '../../../../src/figures/geometry/earth';
import { everyPath } from '../../../../src/figures/traffic/every-path';
import { contentsOf, plainKit, plainSubject, runwayFeature, spotFeature } from '../../../support/contents';

const threshold = [8.5, 47.4] as const;
const runway = runwayFeature('rwy', threshold, destination(threshold, 90, 2500), [
  { designator: '09', elevation: 430, circuit: 'right' },
  { designator: '27', elevation: 430 },
]);
const at = (bearing: number, distance: number) => destination(threshold, bearing, distance);
const lenses = [{ key: 'long', name: 'Long', shortest: 200, longest: 800, widestAperture: 6.3 }];

describe('where the pass of a break stands', () => {
  const contents = contentsOf(
    [
      { ...runway, properties: { ...runway.properties, patterns: [{ pattern: 'break', end: 0 }] } },
      spotFeature('threshold', at(180, 400), { ground: 430 }),
      spotFeature('inside', at(170, 1200), { ground: 430 }),
      spotFeature('under', at(135, 1650), { ground: 430 }),
    ],
    {
      site: { elevation: 430, timeZone: 'Europe/Zurich' },
      subjects: [{ ...plainSubject, length: 15, span: 10, height: 5, approachSpeed: 72, climbSpeed: 130 }],
      kit: { ...plainKit, lenses },
    },
  );
  const [path] = everyPath(contents, (kind) => kind === 'pattern', null);
  const passOf = (id: string) => {
    const spot = figuresFor(
      contents,
      Date.UTC(2026, 8, 21, 12),
      null,
      (kind) => kind === 'pattern',
    ).spots.find((s) => s.id === id);
    const pass = spot?.paths[0]?.pass;
    const i = pass && path ? path.samples.station.indexOf(pass.station) : -1;
    return { pass, bank: ((path?.samples.bank[i] ?? NaN) * 180) / Math.PI };
  };

  test('[F1031] beside the threshold it is the landing, not the break 1,500 ft up', () => {
    const { pass, bank } = passOf('threshold');
    expect(Math.abs(pass?.station ?? NaN)).toBeLessThan(300);
    expect(bank).toBeCloseTo(0, 6);
  });
  test('[F1032] in the middle of the turn there is none: all of it is a radius away', () => {
    expect(passOf('inside').pass).toBeNull();
  });
  test('[F1033] under the turn it is the break itself, steeply banked, seen from below', () => {
    const { pass, bank } = passOf('under');
    expect(pass?.elevation ?? 0).toBeGreaterThan(30);
    expect(bank).toBeGreaterThan(40);
  });
});
