import { describe, expect, test } from 'vitest';
import { siteFrame } from '../../src/figures/sight/site-frame';
import { areaAbout } from '../../src/sweep/area';
import { candidatesOf } from '../../src/sweep/candidates';
import { chooseCells } from '../../src/sweep/choose-cells';
import { planSweep } from '../../src/sweep/plan';
import { emptyFigures, Sweep } from '../../src/sweep/sweep';
import { madeGround } from '../support/made-ground';
import { contentsOf, plainKit, plainSubject, runwayFeature } from '../support/contents';

const runway = runwayFeature(
  'main',
  [8.01, 50.02],
  [8.0305, 50.021],
  [
    { designator: '08', elevation: 112 },
    { designator: '26', elevation: 112 },
  ],
);
const contents = contentsOf([runway], {
  subjects: [plainSubject],
  kit: plainKit,
  site: { reference: [8.01, 50.02], timeZone: 'Europe/Berlin' },
});
const asked = {
  side: 3000,
  cell: 50,
  hours: { from: Date.UTC(2026, 5, 21, 4), to: Date.UTC(2026, 5, 21, 19) },
  step: 3600,
  names: ['main/08/arrival', 'main/08/departure'],
  wind: null,
  configuration: 0,
  at: Date.UTC(2026, 5, 21, 12),
} as const;

interface Place {
  readonly arrivals: number;
  readonly departures: number;
  /** Instants at which either is good. */
  readonly either: number;
  readonly worth?: number;
  readonly isUnknown?: boolean;
}

/** Places a kilometre apart from each other, by their names in the order in which they are proposed. */
function ranked(places: Readonly<Record<string, Place>>): readonly string[] {
  const area = areaAbout(contents.runways, siteFrame(contents.site.reference), 50, 3000);
  const names = Object.keys(places);
  const figures = emptyFigures(
    Int32Array.from(names, (_, k) => k * 20),
    2,
  );
  Object.values(places).forEach(({ arrivals, departures, either, worth = 5, isUnknown = false }, k) => {
    figures.goodByPath.set([arrivals, departures], 2 * k);
    figures.good[k] = either;
    figures.summedWorth[k] = worth;
    figures.focal[k] = 200;
    figures.ground[k] = isUnknown ? 1 : 0;
  });
  const planned = planSweep(contents, asked, null);
  if (!planned.ok) throw new Error(planned.reason);
  return chooseCells(figures, { ...planned.plan, area }, { wayOf: () => null, isStandable: () => true }).map(
    (k) => names[k] ?? '',
  );
}

describe('[S356] which place stands first', () => {
  // In each hour at the bend there are arrivals and departures to photograph: twice the aircraft.
  test('three hours of arrivals and departures at once before four hours of arrivals alone', () => {
    expect(
      ranked({
        mound: { arrivals: 4, departures: 0, either: 4 },
        bend: { arrivals: 3, departures: 3, either: 3 },
      }),
    ).toEqual(['bend', 'mound']);
  });

  // Going for the day one wants arrivals all day rather than a morning of both.
  test('nine hours of arrivals before four of both: it is what comes past that counts, not how many kinds', () => {
    expect(
      ranked({
        bend: { arrivals: 4, departures: 4, either: 4 },
        mound: { arrivals: 9, departures: 0, either: 9 },
      }),
    ).toEqual(['mound', 'bend']);
  });

  test('of places as good as each other the better light; a farmer’s field behind every public way, whatever it offers', () => {
    expect(
      ranked({
        dull: { arrivals: 3, departures: 3, either: 3, worth: 4 },
        field: { arrivals: 9, departures: 9, either: 9, worth: 20, isUnknown: true },
        bright: { arrivals: 6, departures: 0, either: 6, worth: 6 },
      }),
    ).toEqual(['bright', 'dull', 'field']);
  });
});

test('[S357] the minutes by which places are ranked are told with each, and a reader sees them fall, though places move within their cells', () => {
  // Three runways on a real field: many paths, none of them alike.
  const field = madeGround('NZCH', 'B738');
  const noon = Date.UTC(2026, 4, 10);
  const hours = { from: noon - 4 * 3_600_000, to: noon + 6 * 3_600_000 };
  const planned = planSweep(
    field,
    { ...asked, side: null, cell: 100, step: 3600, hours, names: null, at: noon },
    null,
  );
  if (!planned.ok) throw new Error(planned.reason);
  const sweep = new Sweep(field, planned.plan, null);
  const cells = Int32Array.from({ length: planned.plan.area.count ** 2 }, (_, i) => i);
  const { candidates } = candidatesOf(sweep, sweep.figuresOf(cells));
  expect(candidates.length).toBeGreaterThan(6);
  for (const { paths, pathMinutes, goodMinutes } of candidates) {
    expect(pathMinutes).toBe(paths.reduce((sum, path) => sum + path.goodMinutes, 0));
    expect(pathMinutes).toBeGreaterThanOrEqual(goodMinutes);
  }
  for (const ground of ['open', 'unknown'] as const) {
    const told = candidates.filter((c) => c.ground === ground).map((c) => c.pathMinutes);
    expect(told).toEqual(told.toSorted((a, b) => b - a));
  }
});
