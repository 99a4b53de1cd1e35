import { describe, expect, test } from 'vitest';
import { displayFigures } from '../../../src/figures/display/display-figures';
import { publishedMinima } from '../../../src/figures/display/published-minima';
import { destination } from '../../../src/figures/geometry/earth';
import { contentsOf, feature, plainSubject } from '../../support/contents';

const middle = [8.5, 47.4] as const;
const at = (bearing: number, distance: number) => destination(middle, bearing, distance);
const knot = 1852 / 3600;
const foot = 0.3048;

const contents = (crowd: boolean) =>
  contentsOf(
    [
      feature('show', 'display-line', 'LineString', [at(270, 800), at(90, 800)], {
        speed: 300 * knot,
        programme: [
          { time: '08:00', name: 'Early' },
          { time: '13:30', name: 'Noon' },
          { time: '19:00', name: 'Late' },
          { time: '23:00', name: 'Night', date: '2026-12-01' },
        ],
      }),
      ...(crowd ? [feature('crowd', 'crowd-line', 'LineString', [at(170, 233.5), at(180, 230)])] : []),
    ],
    { subjects: [plainSubject], site: { timeZone: 'Europe/Zurich' } },
  );
const figures = (crowd = true) => {
  const all = contents(crowd);
  const [display] = all.displayLines;
  if (!display) throw new Error('expected a display line');
  return displayFigures(display, all, '2026-09-21');
};

describe('a display line', () => {
  test('[F1065] is as far from its crowd as the two lines are apart', () => {
    expect(figures().crowdDistance).toBeCloseTo(230, 0);
    expect(figures(false).crowdDistance).toBeNull();
  });

  test('[F1066] the sun by the hour of the programme, from the crowd line', () => {
    // The crowd looks north: the morning's sun is on its right, the evening's on its left.
    expect(figures().programme.map(({ light }) => light?.lit)).toEqual([
      'from-the-right',
      'behind-you',
      'from-the-left',
      'dark',
    ]);
    expect(figures(false).programme.every(({ light }) => light === null)).toBe(true);
  });

  test('[F1067] FAA show lines by category: 500, 1,000 and 1,500 ft; CAP 403 230 m above 300 kt (memory)', () => {
    const aerobatic = (knots: number) =>
      publishedMinima(knots * knot)
        .filter(({ what }) => /aerobatic/.test(what))
        .map(({ distance }) => Math.round(distance * 10) / 10);
    const feet = (ft: number) => Math.round(ft * foot * 10) / 10;
    expect(aerobatic(120)).toEqual([150, feet(500)]);
    expect(aerobatic(200)).toEqual([150, feet(1000)]);
    expect(aerobatic(350)).toEqual([230, feet(1500)]);
  });
});
