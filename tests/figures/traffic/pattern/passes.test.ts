import { describe, expect, test } from 'vitest';
import { figuresFor } from '../../../../src/figures/figures-for';
import { destination, frameAt, mapped, positionOf } from '../../../../src/figures/geometry/earth';
import { everyPath } from '../../../../src/figures/traffic/every-path';
import type { Path } from '../../../../src/figures/traffic/paths';
import {
  contentsOf,
  feature,
  plainKit,
  plainSubject,
  runwayFeature,
  spotFeature,
} from '../../../support/contents';

const middle = [8.5, 47.4] as const;
const at = (bearing: number, distance: number) => destination(middle, bearing, distance);
const jet = { ...plainSubject, length: 15, span: 10, height: 5, approachSpeed: 72, climbSpeed: 130 };
const rotor = {
  ...{ ...plainSubject, length: 12, span: 10.7, height: 3.3, propulsion: 'rotor', rpm: 390, blades: 3 },
  ...{ approachSpeed: 33, climbSpeed: 33, groundRun: 0, landingRun: 0, climbGradient: 0.15 },
};
const site = { elevation: 430, timeZone: 'Europe/Zurich' };

/** A display line from west to east, 230 m north of its crowd. */
const display = (properties: object = {}) => [
  feature('show', 'display-line', 'LineString', [at(270, 800), at(90, 800)], {
    passes: ['level', 'climbing', 'turning-away', 'topside', 'underside'],
    ...properties,
  }),
  feature('crowd', 'crowd-line', 'LineString', [at(250, 600), at(180, 230), at(110, 600)]),
];

interface Where {
  readonly east: number;
  readonly north: number;
  /** m above the field, centre. */
  readonly height: number;
  readonly bank: number;
  readonly attitude: number;
}
function along({ samples }: Path): Where[] {
  const frame = frameAt(middle);
  const degrees = (x: number | undefined) => ((x ?? NaN) * 180) / Math.PI;
  return Array.from({ length: samples.count }, (_, i) => {
    const centre = [...samples.centre.subarray(3 * i, 3 * i + 3)] as unknown as readonly [
      number,
      number,
      number,
    ];
    const [east, north] = mapped(frame, positionOf(centre));
    return {
      east,
      north,
      height: samples.height[i] ?? NaN,
      bank: degrees(samples.bank[i]),
      attitude: degrees(samples.attitude[i]),
    };
  });
}

function paths(features: Parameters<typeof contentsOf>[0], subject: object) {
  const lenses = [{ key: 'long', name: 'Long', shortest: 200, longest: 800, widestAperture: 6.3 }];
  const contents = contentsOf(features, { site, subjects: [subject], kit: { ...plainKit, lenses } });
  const all = everyPath(contents, (kind) => kind === 'pass', null);
  const named = (name: string) => {
    const found = all.find((p) => p.ref.path === name);
    if (!found) throw new Error(`expected ${name}, got ${all.map((p) => p.ref.path).join(', ')}`);
    return along(found);
  };
  return { names: all.map((p) => p.ref.path), named, contents };
}

describe('passes along a display line', () => {
  const { names, named } = paths(display(), jet);

  test('[F1020] each pass both ways; without a crowd line only those that do not turn', () => {
    expect(names).toHaveLength(10);
    const [line] = display();
    expect(paths(line ? [line] : [], jet).names).toEqual([
      'show/level/forward',
      'show/level/backward',
      'show/climbing/forward',
      'show/climbing/backward',
    ]);
  });

  test.each(['forward', 'backward'])('[F1021] no pass %s comes nearer to the crowd than the line', (way) => {
    for (const pass of ['level', 'climbing', 'turning-away', 'topside', 'underside'])
      for (const place of named(`show/${pass}/${way}`)) expect(place.north).toBeGreaterThan(-2);
  });

  test.each([
    ['forward', 1],
    ['backward', -1],
  ])(
    '[F1022] flown %s, a topside pass is banked to the crowd, an underside pass away from it',
    (way, sign) => {
      const banks = (pass: string) => named(`show/${pass}/${way}`).filter((p) => Math.abs(p.east) < 100);
      // Flying east the crowd is on the right: the right wing down shows it the top.
      for (const p of banks('topside')) expect(sign * p.bank).toBeCloseTo(60, 0);
      for (const p of banks('underside')) expect(sign * p.bank).toBeCloseTo(-60, 0);
      for (const p of banks('level')) expect(p.bank).toBe(0);
      expect(Math.min(...named(`show/turning-away/${way}`).map((p) => sign * p.bank))).toBeCloseTo(-60, 0);
    },
  );

  test('[F1023] an underside pass touches the line at its middle, a topside pass swings out behind it', () => {
    const nearest = Math.min(...named('show/underside/forward').map((p) => p.north));
    expect(nearest).toBeCloseTo(0, 0);
    // 4 arcs of 30 degrees: out by 2 r (1 - cos 30), r = v2 / (g tan 60).
    const radius = 130 ** 2 / (9.80665 * Math.tan(Math.PI / 3));
    const out = Math.max(...named('show/topside/forward').map((p) => p.north));
    expect(out).toBeCloseTo(2 * radius * (1 - Math.cos(Math.PI / 6)), -1);
  });

  test('[F1024] 100 m above the field unless stated; a climbing pass climbs from the middle on', () => {
    const wheels = (p: Where) => p.height - 2.5;
    for (const p of named('show/level/forward')) expect(wheels(p)).toBeCloseTo(100, 1);
    const climb = named('show/climbing/forward');
    expect(wheels(climb[0] as Where)).toBeCloseTo(100, 1);
    const up = climb.find((p) => p.east > 400) as Where;
    expect(wheels(up)).toBeCloseTo(100 + 0.5 * up.east, 0);
    expect(up.attitude).toBeGreaterThan(26);
    expect(wheels(paths(display({ height: 60 }), jet).named('show/level/forward')[0] as Where)).toBeCloseTo(
      60,
      1,
    );
  });

  // Early afternoon in September: the sun stands in the south, behind the crowd, 40 degrees up.
  const noon = Date.UTC(2026, 8, 21, 12, 0);
  const spots = (pass: string) => {
    const { contents } = paths(
      [
        ...display({ passes: [pass] }),
        spotFeature('sunny', at(180, 260), { ground: 430 }),
        spotFeature('against', at(0, 800), { ground: 430 }),
      ],
      jet,
    );
    const figures = figuresFor(contents, noon, null, () => true);
    return figures.spots.map((s) => s.paths.find((p) => p.ref.path === `show/${pass}/forward`));
  };
  test('[F1025] of the two sides of a display the one with the sun in its back is worth more', () => {
    const [sunny, against] = spots('level');
    expect(sunny?.pass?.light).toBe('front-lit');
    expect(against?.pass?.light ?? 'back-lit').toBe('back-lit');
    expect(sunny?.pass?.score.total ?? 0).toBeGreaterThan((against?.best.score.total ?? 1) + 0.15);
  });
  test('[F1026] a top that is turned to the crowd is lit from behind the crowd', () => {
    const [sunny] = spots('topside');
    expect(sunny?.pass?.flankLit).toBe(true);
    expect(sunny?.pass?.score.total ?? 0).toBeGreaterThan(0.6);
  });
});

describe('helicopters', () => {
  const pad = (properties: Record<string, unknown> = {}) =>
    feature('pad', 'helipad', 'Point', middle, properties);

  test('[F1027] come to a hover down 8 degrees along the stated course, and go on into the same wind', () => {
    const { names, named } = paths([pad({ courses: [240] })], rotor);
    expect(names).toEqual(['pad/240/approach', 'pad/240/hover', 'pad/240/departure']);
    const approach = named('pad/240/approach');
    const last = approach.at(-1) as Where;
    expect(Math.hypot(last.east, last.north)).toBeLessThan(0.1);
    expect(last.height - 3.3 / 2).toBeCloseTo(1.5, 2);
    const out = approach.find((p) => Math.hypot(p.east, p.north) < 600) as Where;
    // From 60 degrees, since it flies to 240.
    expect(Math.atan2(out.east, out.north)).toBeCloseTo(Math.PI / 3, 2);
    expect((out.height - last.height) / Math.hypot(out.east, out.north)).toBeCloseTo(
      Math.tan((8 * Math.PI) / 180),
      3,
    );
    const away = named('pad/240/departure').at(-1) as Where;
    expect(Math.atan2(-away.east, -away.north)).toBeCloseTo(Math.PI / 3, 2);
  });

  test('[F1028] without a stated course they follow the ends of the longest runway; other subjects never come', () => {
    const runway = runwayFeature('rwy', at(250, 900), at(70, 900), [
      { designator: '07' },
      { designator: '25' },
    ]);
    expect(paths([pad(), runway], rotor).names.filter((n) => n.endsWith('hover'))).toEqual([
      'pad/070/hover',
      'pad/250/hover',
    ]);
    expect(paths([pad(), runway], jet).names).toEqual([]);
  });

  test('[F1029] from any direction the headline is the hover, of which nobody knows where it faces', () => {
    const { contents, names } = paths([pad(), spotFeature('s', at(200, 180), { ground: 430 })], rotor);
    expect(names).toEqual(['pad/any/hover']);
    const [path] = figuresFor(contents, Date.UTC(2026, 5, 21, 14), null, () => true).spots[0]?.paths ?? [];
    expect(path?.best.aspect).toBeNull();
    expect(path?.pass ?? path?.best).not.toBeNull();
    expect(path?.best.speed).toBe(0);
    expect(path?.best.onGround).toBe(false);
  });
});

describe('winch launches', () => {
  test('[F1030] a glider climbs at 40 degrees to a third and more of the cable, and lets go', () => {
    const glider = { ...plainSubject, propulsion: 'none', height: 1.5, approachSpeed: 27, climbSpeed: 27 };
    const run = feature('winch', 'winch-run', 'LineString', [at(270, 500), at(90, 500)]);
    const launch = paths([run], glider).named('winch/launch');
    expect((launch[0] as Where).height).toBeCloseTo(0.75, 2);
    expect(Math.max(...launch.map((p) => p.attitude))).toBeCloseTo(40, 0);
    expect(Math.max(...launch.map((p) => p.height))).toBeGreaterThan(330);
  });
});
