import { describe, expect, test } from 'vitest';
import { areaAbout } from '../../../src/sweep/area';
import { GroundPlan } from '../../../src/sweep/ground/ground-plan';
import { siteFrame } from '../../../src/figures/sight/site-frame';
import { destination } from '../../../src/figures/geometry/earth';
import { contentsOf, feature, plainSubject } from '../../support/contents';

const middle = [8.5, 47.4] as const;
const at = (bearing: number, distance: number) => destination(middle, bearing, distance);

function planFor(subject: object) {
  const contents = contentsOf(
    [
      feature('pad', 'helipad', 'Point', middle, { name: 'Pad' }),
      feature('winch', 'winch-run', 'LineString', [at(90, 500), at(90, 1300)], { name: 'Winch' }),
    ],
    { subjects: [{ ...plainSubject, ...subject }], site: { reference: middle } },
  );
  return new GroundPlan(
    contents,
    areaAbout(contents.runways, siteFrame(middle), 20, 4000),
    Date.UTC(2026, 5, 21, 12),
  );
}

describe('ground about helicopters and winches', () => {
  test('[S330] nobody stands within three rotor diameters of a helipad, whatever is photographed', () => {
    const plan = planFor({ propulsion: 'rotor', span: 16 });
    expect(plan.ofPlace(0, 47).closedBy).toBe('helipad');
    expect(plan.ofPlace(0, 49).ground).toBe('unknown');
    expect(planFor({}).ofPlace(0, 35).closedBy).toBe('helipad');
  });
  test('[S331] nor within 50 m of a winch cable', () => {
    const plan = planFor({});
    expect(plan.ofPlace(900, 49).closedBy).toBe('winch-run');
    expect(plan.ofPlace(900, 51).ground).toBe('unknown');
  });
});
