import { booleanPointInPolygon, buffer, lineString, polygon } from '@turf/turf';
import { describe, expect, test } from 'vitest';
import { frameAt, mapped, placed, positionOf } from '../../../src/figures/geometry/earth';
import { siteFrame } from '../../../src/figures/sight/site-frame';
import type { Position } from '../../../src/survey/document';
import { areaAbout } from '../../../src/sweep/area';
import { GroundPlan } from '../../../src/sweep/ground/ground-plan';
import { contentsOf, feature, plainKit, plainSubject, runwayFeature } from '../../support/contents';
import { seeded } from '../../support/tolerance';

const origin: Position = [8, 50];
const frame = frameAt(origin);
/** m east and north of the western end of a runway that lies due east, as longitude and latitude. */
const at = (x: number, y: number): Position => positionOf(placed(frame, x, y, 0));
const box = (x0: number, y0: number, x1: number, y1: number) => [
  [at(x0, y0), at(x1, y0), at(x1, y1), at(x0, y1), at(x0, y0)],
];

const noon = Date.UTC(2026, 5, 21, 12);

interface Given {
  readonly length?: number;
  readonly subject?: Record<string, unknown>;
  readonly features?: readonly unknown[];
}

function planOf({ length = 2000, subject = plainSubject, features = [] }: Given = {}) {
  const contents = contentsOf(
    [runwayFeature('r', at(0, 0), at(length, 0), [{ designator: '09' }, { designator: '27' }]), ...features],
    { subjects: [subject], kit: plainKit, site: { reference: origin } },
  );
  const area = areaAbout(contents.runways, siteFrame(origin), 20, null);
  return new GroundPlan(contents, area, noon);
}
const says = (plan: GroundPlan, x: number, y: number) => {
  const { ground, closedBy } = plan.ofCell(x, y);
  return closedBy ? `${ground}: ${closedBy}` : ground;
};
const use = (id: string, kind: string, line: readonly Position[], more = {}) =>
  feature(id, 'ground-use', 'LineString', line, { use: kind, name: id, ...more });
const piece = (id: string, kind: string, coordinates: unknown, more = {}) =>
  feature(id, 'ground-use', 'Polygon', coordinates, { use: kind, name: id, ...more });
const propeller = { ...plainSubject, propulsion: 'propeller' };

describe('[S150] closed ground', () => {
  test('beside a runway and beyond its ends, by its length', () => {
    const plan = planOf({ subject: propeller });
    expect(says(plan, 1000, 74)).toBe('closed: runway');
    expect(says(plan, 1000, 76)).toBe('unknown');
    expect(says(plan, -74, 0)).toBe('closed: runway');
    expect(says(plan, -76, 0)).toBe('unknown');
    expect(says(planOf({ length: 1199, subject: propeller }), 500, 41)).toBe('unknown');
    expect(says(planOf({ length: 1199, subject: propeller }), 500, 39)).toBe('closed: runway');
    expect(says(planOf({ length: 790, subject: propeller }), 500, 31)).toBe('unknown');
  });

  test('behind the end from which a jet takes off, even on a public road', () => {
    const features = [use('Mill Lane', 'road', [at(-150, -400), at(-150, 400)], { access: 'public' })];
    expect(says(planOf({ features }), -150, 55)).toBe('closed: jet-blast');
    expect(says(planOf({ features }), -150, 65)).toBe('open');
    expect(says(planOf({ features, subject: propeller }), -150, 55)).toBe('open');
    expect(says(planOf({ features: [] }), -205, 0)).toBe('unknown');
  });

  test('no-go areas, aprons, taxi routes, buildings, water, rails: the first of the list is the reason', () => {
    const features = [
      feature('ng', 'no-go', 'Polygon', box(300, 500, 400, 600), { name: 'Lights' }),
      feature('ap', 'apron', 'Polygon', box(380, 500, 500, 600)),
      feature('tx', 'taxi-route', 'LineString', [at(800, 500), at(1200, 500)]),
      feature('hut', 'obstacle', 'Polygon', box(1500, 500, 1600, 600), { height: 5 }),
      feature('wood', 'obstacle', 'Polygon', box(1700, 500, 1800, 600), { height: 15, sight: 'leaf' }),
      piece('Mere', 'water', box(300, 800, 400, 900)),
      use('Line 2', 'rail', [at(800, 800), at(1200, 800)]),
    ];
    const plan = planOf({ features });
    expect(says(plan, 390, 550)).toBe('closed: no-go');
    expect(says(plan, 450, 550)).toBe('closed: apron');
    expect(says(plan, 539, 550)).toBe('closed: apron');
    expect(says(plan, 541, 550)).toBe('unknown');
    expect(says(plan, 1000, 539)).toBe('closed: taxi-route');
    expect(says(plan, 1000, 541)).toBe('unknown');
    expect(says(plan, 1550, 550)).toBe('closed: building');
    expect(says(plan, 1750, 550)).toBe('unknown');
    expect(says(plan, 350, 850)).toBe('closed: water');
    expect(says(plan, 1000, 814)).toBe('closed: rail');
    expect(says(plan, 1000, 816)).toBe('unknown');
  });

  test('what access says no to; a private road is not open', () => {
    const plan = planOf({
      features: [use('Farm road', 'road', [at(0, 600), at(900, 600)], { access: 'forbidden' })],
    });
    expect(says(plan, 500, 603)).toBe('closed: access');
    expect(says(plan, 500, 612)).toBe('unknown');
  });
});

describe('[S151] open ground', () => {
  test('within 10 m of any part of the cell, where people may walk, said or unsaid; what must be asked for is unknown', () => {
    for (const [access, expected] of [
      ['public', 'open'],
      ['permitted', 'open'],
      [undefined, 'open'],
      ['ask', 'unknown'],
    ] as const) {
      const plan = planOf({ features: [use('Lane', 'road', [at(0, 600), at(900, 600)], { access })] });
      // The cell reaches 10 m to each side.
      expect(says(plan, 500, 619.9)).toBe(expected);
      expect(says(plan, 500, 620.5)).toBe('unknown');
    }
  });

  test('the path along the fence: a public footpath in the buffer, outside the outline, from 30 m of the centreline on', () => {
    const path = (y: number) =>
      use('Perimeter path', 'path', [at(500, y), at(1500, y)], { access: 'public' });
    const plan = planOf({ features: [path(45)] });
    expect(plan.ofCell(1000, 45)).toMatchObject({ ground: 'open', veryClose: true, name: 'Perimeter path' });
    expect(says(plan, 1000, 29)).toBe('closed: runway');
    // A path of which nobody says that it is public stays behind the buffer; so does a road.
    const unsaid = planOf({ features: [use('Track', 'path', [at(500, 45), at(1500, 45)])] });
    expect(says(unsaid, 1000, 45)).toBe('closed: runway');
    const inside = planOf({ features: [path(45), piece('Field', 'aerodrome', box(-200, -200, 2200, 200))] });
    expect(says(inside, 1000, 45)).toBe('closed: runway');
  });

  test('the terrace of the terminal: a car park inside the outline is unknown, one across the road is open', () => {
    const features = [
      piece('Field', 'aerodrome', box(-200, -300, 2200, 300)),
      piece('Terminal parking', 'parking', box(800, 200, 900, 290), { access: 'public' }),
      piece('Village green', 'green', box(800, 320, 900, 400)),
    ];
    const plan = planOf({ features });
    expect(says(plan, 850, 250)).toBe('unknown');
    expect(plan.ofCell(850, 350)).toMatchObject({ ground: 'open', name: 'Village green' });
  });

  test('inside the outline a public road and the deck of the terrace are unknown too, and a public path beside the buffer', () => {
    const features = [
      piece('Field', 'aerodrome', box(-200, -300, 2200, 300)),
      use('Terminal road', 'road', [at(600, 200), at(1400, 200)], { access: 'public' }),
      use('Garden path', 'path', [at(600, -200), at(1400, -200)], { access: 'public' }),
      feature('terrace', 'obstacle', 'Polygon', box(1500, 200, 1600, 260), { height: 9, standOn: true }),
    ];
    const plan = planOf({ features });
    expect(says(plan, 1000, 205)).toBe('unknown');
    expect(says(plan, 1000, -205)).toBe('unknown');
    expect(says(plan, 1550, 230)).toBe('unknown');
    expect(says(planOf({ features: features.slice(1) }), 1550, 230)).toBe('open');
  });

  test('the path that comes up to the fence: closed under 30 m of the centreline, open from there, and out of the buffer no longer "very close"', () => {
    const up = use('Field path', 'path', [at(1000, 0), at(1000, 400)], { access: 'public' });
    const plan = planOf({ features: [up] });
    expect(plan.ofPlace(1000, 29.9)).toMatchObject({ ground: 'closed', closedBy: 'runway' });
    expect(plan.ofPlace(1000, 30.1)).toMatchObject({ ground: 'open', veryClose: true });
    expect(plan.ofPlace(1000, 74.9)).toMatchObject({ ground: 'open', veryClose: true });
    expect(plan.ofPlace(1000, 75.1)).toMatchObject({ ground: 'open', veryClose: false });
    // Beside the path the buffer holds from 10 m on.
    expect(plan.ofPlace(1011, 50)).toMatchObject({ ground: 'closed', closedBy: 'runway' });
  });

  test('the footpath along the apron: a public one is let through the buffers of aprons and taxi routes, a public road is not', () => {
    const given = (kind: string) => [
      feature('ap', 'apron', 'Polygon', box(600, 500, 800, 600)),
      feature('tx', 'taxi-route', 'LineString', [at(1000, 500), at(1400, 500)]),
      use('Fence way', kind, [at(500, 480), at(1500, 480)], { access: 'public' }),
    ];
    const walked = planOf({ features: given('path') });
    expect(walked.ofCell(700, 480)).toMatchObject({ ground: 'open', veryClose: true, name: 'Fence way' });
    expect(walked.ofCell(1200, 480)).toMatchObject({ ground: 'open', veryClose: true });
    const driven = planOf({ features: given('road') });
    expect(says(driven, 700, 480)).toBe('closed: apron');
    expect(says(driven, 1200, 480)).toBe('closed: taxi-route');
  });

  test('no path lets one through a no-go area, a building, water or the blast of a jet', () => {
    const features = [
      use('Field path', 'path', [at(-100, 0), at(-100, 700)], { access: 'public' }),
      feature('ng', 'no-go', 'Polygon', box(-150, 300, -50, 340), { name: 'Lights' }),
      feature('hut', 'obstacle', 'Polygon', box(-150, 400, -50, 440), { height: 5 }),
      piece('Mere', 'water', box(-150, 500, -50, 540)),
    ];
    const plan = planOf({ features });
    expect(says(plan, -100, 50)).toBe('closed: jet-blast');
    expect(says(plan, -100, 320)).toBe('closed: no-go');
    expect(says(plan, -100, 420)).toBe('closed: building');
    expect(says(plan, -100, 520)).toBe('closed: water');
    expect(says(plan, -100, 600)).toBe('open');
  });

  test('15 m of a motorway are closed, but for a footway over it', () => {
    const features = [
      use('A 9', 'motorway', [at(500, 900), at(1500, 900)]),
      use('Bridge', 'path', [at(1000, 700), at(1000, 1100)]),
    ];
    const plan = planOf({ features });
    expect(says(plan, 700, 914)).toBe('closed: motorway');
    expect(says(plan, 700, 916)).toBe('unknown');
    expect(plan.ofCell(1000, 900)).toMatchObject({ ground: 'open', name: 'Bridge' });
  });

  test('the level crossing: a mapped footway over a railway or beside a motorway is open, the line itself is not', () => {
    const features = [
      use('Line 2', 'rail', [at(800, 800), at(1200, 800)]),
      use('Crossing', 'path', [at(1000, 700), at(1000, 900)]),
    ];
    const plan = planOf({ features });
    expect(plan.ofCell(1000, 800)).toMatchObject({ ground: 'open', name: 'Crossing' });
    expect(says(plan, 1100, 800)).toBe('closed: rail');
  });

  test('the deck of a car park that may be stood on is a place, and no building', () => {
    const deck = feature('deck', 'obstacle', 'Polygon', box(800, 500, 900, 560), {
      height: 12,
      standOn: true,
      name: 'Deck',
    });
    const plan = planOf({ features: [deck] });
    expect(plan.ofPlace(850, 530)).toMatchObject({ ground: 'open', name: 'Deck' });
    expect(plan.deckAt(850, 530)?.id).toBe('deck');
    expect(plan.deckAt(850, 570)).toBeNull();
  });
});

test('[S152] buffers about lines and areas are those of Turf, but for what its sphere differs', () => {
  const taxi = [at(200, 400), at(500, 700), at(900, 650)];
  const apron = box(1200, 500, 1500, 700);
  const plan = planOf({
    features: [feature('tx', 'taxi-route', 'LineString', taxi), feature('ap', 'apron', 'Polygon', apron)],
  });
  const round = [
    buffer(lineString(taxi.map(([x, y]) => [x, y])), 40, { units: 'meters', steps: 64 }),
    buffer(polygon(apron.map((ring) => ring.map(([x, y]) => [x, y]))), 40, { units: 'meters', steps: 64 }),
  ];
  const random = seeded(52);
  let [compared, closed] = [0, 0];
  for (let k = 0; k < 3000; k++) {
    const [x, y] = [100 + 1500 * random(), 300 + 500 * random()];
    const mine = plan.ofPlace(x, y).ground === 'closed';
    const edge = [-0.6, 0.6].map((d) =>
      [
        [d, d],
        [d, -d],
      ].map(([dx = 0, dy = 0]) =>
        round.some((area) => area && booleanPointInPolygon([...at(x + dx, y + dy)], area)),
      ),
    );
    // Within 0.6 m of Turf's edge either answer will do.
    const theirs = new Set(edge.flat());
    if (theirs.size > 1) continue;
    compared++;
    if (mine) closed++;
    expect(theirs.has(mine)).toBe(true);
  }
  expect(compared).toBeGreaterThan(2900);
  expect(closed).toBeGreaterThan(300);
  expect(mapped(frame, at(10, 20))[0]).toBeCloseTo(10, 3);
});

describe('[S196] what people said goes before what the map says', () => {
  const road = use('Mill Lane', 'road', [at(0, -300), at(2000, -300)], { access: 'public' });
  const spot = (access: object) =>
    planOf({
      features: [road, feature('s', 'standing-spot', 'Point', at(500, -300), { name: 'Gate', access })],
    });
  const asked = { askedOn: '2026-05-01' };

  test('a refusal closes it, though the status says "ask"; so it does after the day it was granted for', () => {
    const plan = spot({ status: 'ask', permission: { ...asked, answer: 'refused' } });
    expect(says(plan, 505, -300)).toBe('closed: refused');
    expect(says(plan, 600, -300)).toBe('open');
  });

  test('a permission that holds that day leaves the road open; one that has expired makes it one to ask for', () => {
    const until = (day: string) => ({
      status: 'ask',
      permission: { ...asked, answer: 'granted', from: '2026-05-01', until: day },
    });
    expect(says(spot(until('2026-06-21')), 505, -300)).toBe('open');
    expect(says(spot(until('2026-06-20')), 505, -300)).toBe('unknown');
  });

  test('an answer that is still waited for does not open it', () => {
    expect(says(spot({ status: 'public', permission: { ...asked, answer: 'waiting' } }), 505, -300)).toBe(
      'unknown',
    );
  });
});
