import { describe, expect, test } from 'vitest';
import { destination } from '../../../../src/figures/geometry/earth';
import { flowFor } from '../../../../src/figures/traffic/flow/flow-for';
import { surfaceOf } from '../../../../src/figures/traffic/surface';
import { readTypedWind } from '../../../../src/figures/traffic/wind/typed-wind';
import { contentsOf, plainSubject, runwayFeature } from '../../../support/contents';

type Properties = Record<string, unknown>;
const from = [8.5, 47.4] as const;
const airliner = { ...plainSubject, key: 'A320', name: 'A320', span: 34, groundRun: 1700, landingRun: 1300 };
const commuter = {
  ...airliner,
  key: 'AT76',
  name: 'AT76',
  propulsion: 'propeller',
  groundRun: 950,
  landingRun: 650,
};
const single = { ...commuter, key: 'C172', name: 'C172', span: 11, groundRun: 290, landingRun: 175 };
const floats = { ...single, key: 'DHC2', name: 'DHC2 on floats', groundRun: 300, seaplane: true };

/** A runway that begins at a place: its first end looks along `bearing`, and both are named after it. */
function strip(
  id: string,
  bearing: number,
  length: number,
  more: Properties = {},
  ends: readonly Properties[] = [],
) {
  const name = (deg: number) => String(Math.round(deg / 10) % 36 || 36).padStart(2, '0');
  return runwayFeature(
    id,
    from,
    destination(from, bearing, length),
    [
      { designator: name(bearing), ...ends[0] },
      { designator: name(bearing + 180), ...ends[1] },
    ],
    { surface: 'asphalt', ...more },
  );
}

function flow(wind: string, subject: Properties, ...runways: readonly object[]) {
  const read = readTypedWind(wind);
  if (!read.ok) throw new Error(read.reason);
  const contents = contentsOf(runways, { subjects: [subject], flow: {} });
  const answer = flowFor(contents, read.value, Date.parse('2026-06-21T10:00:00Z'));
  const named = answer.arrivals.map(({ runway, end }) => {
    const found = contents.runways.find((r) => r.id === runway);
    return found?.ends[end].designator;
  });
  expect(answer.departures).toEqual(answer.arrivals);
  return { ends: named, either: answer.either, light: answer.light, reason: answer.reason };
}

describe('situations that practitioners argue about', () => {
  const main = strip('main', 60, 2600);
  const cross = strip('cross', 150, 900);

  test('[F640] a cross strip straight into a brisk wind: the airliner stays on the long runway as long as its limits hold', () => {
    // 15 kt straight across 06/24, straight down 15.
    expect(flow('150/15', airliner, main, cross)).toMatchObject({
      ends: ['06', '24'],
      either: true,
      light: ['cross'],
    });
    expect(flow('140/19', airliner, main, cross).ends).toEqual(['06']);
    expect(flow('140/19', airliner, main, cross).reason).toMatch(
      /15\/33 \(900 m\) is for light aircraft only/,
    );
  });

  test('[F641] a light aircraft there: the long runway, and the strip besides, at its end into wind', () => {
    expect(flow('080/14', single, main, cross)).toMatchObject({ ends: ['06', '15'], light: ['cross'] });
    // Beyond its own 15 kt of crosswind the strip is the runway in use.
    expect(flow('150/18', single, main, cross).ends).toEqual(['15']);
  });

  test('[F642] 330/12 on a club’s triangle: the grass into wind, not the longest', () => {
    const triangle = [
      strip('a', 30, 800, { surface: 'grass' }),
      strip('b', 90, 700, { surface: 'grass' }),
      strip('c', 150, 600, { surface: 'grass' }),
    ];
    expect(flow('330/12', single, ...triangle)).toMatchObject({ ends: ['33'], either: false, light: [] });
    expect(flow('330/3', single, ...triangle)).toMatchObject({ ends: ['03', '21'], either: true });
    expect(flow('VRB03KT', single, ...triangle).reason).toMatch(/either end of 03\/21, the longest/);
  });

  test('[F643] an A320 and a 700 m grass field: no end, and why', () => {
    const grass = strip('grass', 90, 700, { surface: 'grass' });
    expect(flow('270/10', airliner, grass)).toMatchObject({ ends: [], either: false });
    expect(flow('270/10', airliner, grass).reason).toMatch(
      /^No end can be used: 09 is too short for A320 to take off \(700 m of 1,700 m\)/,
    );
    // Long enough it would still be grass.
    const meadow = strip('meadow', 90, 3000, { surface: 'Grass' });
    expect(flow('270/10', airliner, meadow).reason).toMatch(/not paved \(Grass\), and A320 is a jet/);
    expect(flow('270/10', commuter, meadow).ends).toEqual(['27']);
  });

  test('[F644] the end into wind is too short for a landing: nobody lands with 15 kt behind instead', () => {
    const displaced = strip('d', 90, 2000, {}, [{}, { displaced: 900 }]);
    const answer = flow('270/15', airliner, displaced);
    expect(answer).toMatchObject({ ends: [], either: false });
    expect(answer.reason).toMatch(
      /09 has 15 kt of tailwind, 27 is too short for A320 to land \(1,100 m of 1,591 m\)/,
    );
    // With 4 kt of it the other end will do.
    expect(flow('270/4', airliner, displaced).ends).toEqual(['09']);
    expect(flow('250/5', airliner, displaced).ends).toEqual(['09']);
  });

  test('[F652] a one-way runway, its other end closed: used as it is, with the tailwind said', () => {
    const oneWay = strip('c', 90, 2500, {}, [{}, { closed: true }]);
    const answer = flow('270/15', airliner, oneWay);
    expect(answer).toMatchObject({ ends: ['09'], either: false });
    expect(answer.reason).toMatch(/^Beyond the limits of every runway: .*15 kt of tailwind.*27 is closed/);
  });

  test('[F645] two long runways, one 5 % shorter: the one into wind; one 20 % shorter: the longest until its limits fail', () => {
    const near = strip('near', 150, 2480);
    expect(flow('160/12', airliner, main, near).ends).toEqual(['15']);
    const less = strip('less', 150, 2050);
    expect(flow('100/12', airliner, main, less).ends).toEqual(['06']);
    expect(flow('150/25', airliner, main, less).ends).toEqual(['15']);
    expect(flow('150/25', airliner, main, less).reason).toMatch(
      /06\/24 is passed over: .* 25 kt of crosswind/,
    );
  });

  test('[F646] parallels are used with it in the same direction, a short one beside is not', () => {
    const left = strip('left', 62, 1900);
    const stub = strip('stub', 60, 1400);
    expect(flow('240/12', airliner, main, left, stub).ends).toEqual(['24', '24']);
    expect(flow('240/12', airliner, main, left).reason).toMatch(/with it its parallels: 24/);
    const crossing = strip('crossing', 70, 1900);
    expect(flow('240/12', airliner, main, crossing).ends).toEqual(['24']);
  });

  test('[F647] gusts count, a limit that is met exactly holds', () => {
    expect(flow('150/20', airliner, strip('m', 60, 2600)).reason).toMatch(/straight across/);
    expect(flow('150/15G21', airliner, strip('m', 60, 2600)).reason).toMatch(
      /^Beyond the limits of every runway/,
    );
    expect(flow('150/15G21', airliner, strip('m', 60, 2600)).ends).toEqual(['06', '24']);
  });

  test('[F648] calm and under 5 kt: either end of the longest, whatever the direction', () => {
    for (const wind of ['calm', '150/4', 'VRB15KT'])
      expect(flow(wind, airliner, cross, main)).toMatchObject({ ends: ['06', '24'], either: true });
    expect(flow('150/4', airliner, cross, main).reason).toMatch(/4 kt of wind count as calm/);
    const oneWay = strip('o', 60, 2600, {}, [{ closed: true }]);
    expect(flow('calm', airliner, oneWay)).toMatchObject({ ends: ['24'], either: false });
  });

  test('[F649] water is for seaplanes: the landplane gets the 1,000 m of asphalt beside a 3 km lake', () => {
    const lake = strip('lake', 60, 3000, { surface: 'water' });
    const shore = strip('shore', 150, 1250);
    expect(flow('060/10', commuter, lake, shore)).toMatchObject({ light: [] });
    expect(flow('150/10', commuter, lake, shore).ends).toEqual(['15']);
    expect(flow('060/10', floats, lake, shore).ends).toContain('06');
  });

  test('[F650] ends under 1 kt of headwind apart are as good; 1.2 kt decide', () => {
    // 12 kt: 2 degrees off the beam are 0.42 kt for one end and as much against the other.
    expect(flow('152/12', airliner, strip('m', 60, 2600)).either).toBe(true);
    expect(flow('147/12', airliner, strip('m', 60, 2600))).toMatchObject({ ends: ['06'], either: false });
  });
});

test.each([
  ['asphalt', 'paved'],
  ['CON', 'paved'],
  ['ASPH-CONC-G', 'paved'],
  ['Concrete/Grass', 'paved'],
  ['paved', 'paved'],
  ['unpaved', 'unpaved'],
  ['GRS', 'unpaved'],
  ['Turf', 'unpaved'],
  ['grass, asphalt', 'unpaved'],
  ['GVL', 'unpaved'],
  ['compacted', 'unpaved'],
  ['water', 'water'],
  ['', 'unknown'],
  ['PSP?', 'unknown'],
] as const)('[F651] a surface called "%s" is %s', (text, kind) => {
  expect(surfaceOf(text)).toBe(kind);
});
