import { booleanPointInPolygon, polygon } from '@turf/turf';
import { expect, test } from 'vitest';
import { frameAt, mapped, placed, positionOf } from '../../../src/figures/geometry/earth';
import { siteFrame } from '../../../src/figures/sight/site-frame';
import type { Position } from '../../../src/survey/document';
import { areaAbout } from '../../../src/sweep/area';
import { candidatesOf } from '../../../src/sweep/candidates';
import { GroundPlan } from '../../../src/sweep/ground/ground-plan';
import { planSweep } from '../../../src/sweep/plan';
import { Sweep } from '../../../src/sweep/sweep';
import { contentsOf, feature, plainKit, plainSubject, runwayFeature } from '../../support/contents';

/**
 * Where people who stand at fences would argue: what is within ten metres of a road is not all public. A house is private until
 * somebody says otherwise.
 */
const origin: Position = [8, 50];
const frame = frameAt(origin);
/** m east and north of the western end of a runway that lies due east, as longitude and latitude. */
const at = (x: number, y: number): Position => positionOf(placed(frame, x, y, 0));
const box = (x0: number, y0: number, x1: number, y1: number) => [
  [at(x0, y0), at(x1, y0), at(x1, y1), at(x0, y1), at(x0, y0)],
];
const use = (id: string, kind: string, line: readonly Position[], more = {}) =>
  feature(id, 'ground-use', 'LineString', line, { use: kind, name: id, ...more });
const lane = use('Mill Lane', 'road', [at(-500, -400), at(2500, -400)]);

function contentsWith(features: readonly unknown[]) {
  return contentsOf(
    [runwayFeature('r', at(0, 0), at(2000, 0), [{ designator: '09' }, { designator: '27' }]), ...features],
    { subjects: [plainSubject], kit: plainKit, site: { reference: origin, timeZone: 'Europe/Berlin' } },
  );
}
function planOf(...features: readonly unknown[]) {
  const contents = contentsWith(features);
  return new GroundPlan(contents, areaAbout(contents.runways, siteFrame(origin), 20, null), 0);
}
const says = (plan: GroundPlan, x: number, y: number) => {
  const { ground, closedBy, name } = plan.ofPlace(x, y);
  return [ground, closedBy, name].filter(Boolean).join(', ');
};

test.each([
  [
    'an obstacle',
    feature('house', 'obstacle', 'Polygon', box(900, -420, 960, -406), { height: 7, name: 'No 4' }),
  ],
  // Of a map that knows no heights: it hides nothing, but it is somebody's all the same.
  [
    'a bare footprint',
    feature('house', 'ground-use', 'Polygon', box(900, -420, 960, -406), { use: 'building', name: 'No 4' }),
  ],
] as const)(
  '[S351] before a house 3 m from the edge of a lane one stands on the verge, never in the house: %s',
  (_, house) => {
    const plan = planOf(lane, house);
    // The lane is 6 m wide: its edge is 3 m from the line, and there are 3 m of verge.
    expect(says(plan, 930, -404)).toBe('open, Mill Lane');
    expect(says(plan, 930, -405.9)).toBe('open, Mill Lane');
    expect(says(plan, 930, -406.1)).toBe('closed, building, No 4');
    expect(says(plan, 930, -409)).toBe('closed, building, No 4');
    // Beside it the verge is as wide as elsewhere.
    expect(says(plan, 899, -409)).toBe('open, Mill Lane');
  },
);

test('[S352] up on a deck that is marked one may stand, though the map has a building under it; beside the deck on its roof not', () => {
  const carPark = feature('cp', 'obstacle', 'Polygon', box(900, -520, 1000, -440), {
    height: 9,
    name: 'Car park',
  });
  const shell = feature('shell', 'ground-use', 'Polygon', box(900, -520, 1000, -440), {
    use: 'building',
    name: 'Car park',
  });
  const deck = feature('deck', 'obstacle', 'Polygon', box(905, -515, 960, -445), {
    height: 9,
    name: 'Top deck',
    standOn: true,
  });
  for (const under of [carPark, shell]) {
    const plan = planOf(under, deck);
    expect(says(plan, 930, -480)).toBe('open, Top deck');
    expect(says(plan, 980, -480)).toBe('closed, building, Car park');
    expect(says(planOf(under), 930, -480)).toBe('closed, building, Car park');
  }
  // What else closes ground closes the deck as well.
  const noGo = feature('ng', 'no-go', 'Polygon', box(900, -520, 1000, -440), { name: 'Works' });
  expect(says(planOf(carPark, deck, noGo), 930, -480)).toBe('closed, no-go, Works');
});

test('[S353] an arcade over a public footway: check first, as it is the house’s; elsewhere in the house nobody stands', () => {
  const house = feature('house', 'obstacle', 'Polygon', box(900, -420, 960, -395), {
    height: 12,
    underside: 4,
    name: 'Market hall',
  });
  const arcade = (access?: string) =>
    use('Arcade walk', 'path', [at(880, -398), at(990, -398)], access === undefined ? {} : { access });
  const plan = planOf(house, arcade('public'));
  expect(says(plan, 930, -398)).toBe('unknown, Arcade walk');
  expect(says(plan, 930, -400.5)).toBe('unknown, Arcade walk');
  expect(says(plan, 930, -410)).toBe('closed, building, Market hall');
  // Out in the open it is a footway like any other.
  expect(says(plan, 980, -398)).toBe('open, Arcade walk');
  // A house that stands on the ground has a footway drawn across it: a hall at most, or a slip of the map.
  const solid = feature('house', 'obstacle', 'Polygon', box(900, -420, 960, -395), {
    height: 12,
    name: 'Market hall',
  });
  expect(says(planOf(solid, arcade('public')), 930, -398)).toBe('closed, building, Market hall');
  // Nobody says that people may walk there, or somebody says that they may not.
  expect(says(planOf(house, arcade()), 930, -398)).toBe('closed, building, Market hall');
  expect(says(planOf(house, arcade('forbidden')), 930, -398)).toMatch(/^closed, building/);
});

test('[S354] no place of the list lies in a house, along a lane that houses line on both sides', () => {
  const houses = Array.from({ length: 24 }, (_, k) => {
    const x = -200 + 100 * k;
    const rings = k % 2 === 0 ? box(x, -394, x + 96, -370) : box(x, -430, x + 96, -406);
    return k % 3 === 0
      ? feature(`h${k}`, 'ground-use', 'Polygon', rings, { use: 'building' })
      : feature(`h${k}`, 'obstacle', 'Polygon', rings, { height: 3 });
  });
  const contents = contentsWith([lane, ...houses]);
  const planned = planSweep(
    contents,
    {
      side: 3000,
      cell: 50,
      hours: { from: Date.UTC(2026, 5, 21, 5), to: Date.UTC(2026, 5, 21, 19) },
      step: 14_400,
      names: ['r/09/arrival', 'r/27/arrival'],
      wind: null,
      configuration: 0,
      at: Date.UTC(2026, 5, 21, 12),
    },
    null,
  );
  if (!planned.ok) throw new Error(planned.reason);
  const sweep = new Sweep(contents, planned.plan, null);
  const cells = Int32Array.from({ length: planned.plan.area.count ** 2 }, (_, i) => i);
  const { candidates } = candidatesOf(sweep, sweep.figuresOf(cells));
  expect(candidates.some(({ way }) => way === 'Mill Lane')).toBe(true);
  const footprints = [
    ...contents.obstacles,
    ...contents.groundUses.filter(({ use: is }) => is === 'building'),
  ];
  expect(footprints).toHaveLength(24);
  for (const { position } of candidates)
    for (const { rings } of footprints)
      expect(booleanPointInPolygon([...position], polygon(rings.map((r) => r.map((p) => [...p]))))).toBe(
        false,
      );
  expect(candidates.some(({ position }) => Math.abs(mapped(frame, position)[1] + 400) < 10)).toBe(true);
});
