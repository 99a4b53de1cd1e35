import { expect, test } from 'vitest';
import { readArguments } from '../../src/cli/arguments';
import { pastUse } from '../../src/figures/flown/past-use';
import { recordFrom, sweepJson } from '../../src/cli/sweep-json';
import type { SweepArguments } from '../../src/cli/sweep-arguments';
import { figuresFor } from '../../src/figures/figures-for';
import { contentsOf, feature, plainKit, plainSubject, runwayFeature, spotFeature } from '../support/contents';

const at = Date.UTC(2026, 5, 21, 14);
const features = [
  runwayFeature(
    'main',
    [8.01, 50.02],
    [8.0305, 50.021],
    [
      { designator: '08', elevation: 112 },
      { designator: '26', elevation: 112 },
    ],
  ),
  feature(
    'lane',
    'ground-use',
    'LineString',
    [
      [8.0, 50.0155],
      [8.04, 50.0165],
    ],
    { use: 'road', name: 'Mill Lane' },
  ),
];
const sunside = {
  subjects: [{ ...plainSubject, groundRun: 1200 }],
  kit: plainKit,
  site: { reference: [8.01, 50.02], timeZone: 'Europe/Berlin' },
};
const contents = contentsOf(features, sunside);

function asked(...args: readonly string[]): SweepArguments {
  const read = readArguments(['survey.geojson', '--sweep', ...args], at);
  if (!read.ok || !read.value.sweep) throw new Error(read.ok ? 'expected a sweep' : read.reason);
  return read.value.sweep;
}
function swept(...args: readonly string[]) {
  const answer = sweepJson(
    contents,
    asked(...args),
    at,
    null,
    null,
    pastUse(contents, contents.windRecord, []),
  );
  if (!answer.ok) throw new Error(answer.reason);
  return answer.value;
}
const hour = ['--from', '2026-06-21T14:00:00Z', '--to', '2026-06-21T15:00:00Z', '--step', '3600'] as const;

test('[S170] --sweep prints side, cell, instants, candidates and cells, with the members of the contract', () => {
  const out = swept('--side', '2000', '--cell', '100', ...hour, '--cells');
  expect(Object.keys(out)).toEqual(['side', 'cell', 'instants', 'candidates', 'cells']);
  expect([out.side, out.cell, out.instants]).toEqual([2000, 100, ['2026-06-21T14:00:00Z']]);
  const [first] = out.candidates;
  expect(Object.keys(first ?? {})).toEqual([
    'position',
    'ground',
    'way',
    'goodMinutes',
    'worth',
    'focalLength',
    'visibleShare',
    'paths',
  ]);
  expect(Object.keys(first?.paths[0] ?? {})).toEqual(['path', 'goodMinutes', 'from', 'to']);
  expect(first).toMatchObject({ ground: 'open', way: 'Mill Lane', goodMinutes: 60 });
  const cells = out.cells || [];
  expect(Object.keys(cells[0] ?? {})).toEqual(['position', 'ground', 'goodMinutes', 'worth', 'focalLength']);
  expect(cells.every(({ worth }) => worth > 0)).toBe(true);
  expect(new Set(cells.map(({ ground }) => ground))).toEqual(new Set(['open', 'unknown', 'closed']));
});

test('[S171] worth of the printed cells is what the command prints for spots at their positions', () => {
  const cells =
    swept('--side', '2000', '--cell', '100', ...hour, '--cells', '--paths', 'main/26/arrival').cells || [];
  const some = cells.filter((_, i) => i % 23 === 0);
  expect(some.length).toBeGreaterThan(10);
  const spots = some.map(({ position }, i) => spotFeature(`s${i}`, [position[0], position[1]]));
  const figures = figuresFor(contentsOf([...features, ...spots], sunside), at, null);
  some.forEach((cell, i) => {
    const best = figures.spots[i]?.paths.find(({ ref }) => ref.path === 'main/26/arrival')?.best;
    expect(Math.abs(cell.worth - (best?.score.total ?? NaN))).toBeLessThan(1e-6);
    expect(cell.focalLength).toBeCloseTo(best?.focalLength ?? NaN, 6);
  });
});

test('[S172] the usual hours are civil dawn to dusk, every 15 minutes', () => {
  const { instants } = swept('--side', '500', '--cell', '100');
  // Civil twilight of 21 June at 50 N 8 E: 02:34 to 20:20 UTC, to a minute or two (sun tables, from memory).
  expect(instants[0]).toMatch(/^2026-06-21T02:3/);
  expect(instants.at(-1)).toMatch(/^2026-06-21T20:/);
  expect(Date.parse(instants[1] ?? '') - Date.parse(instants[0] ?? '')).toBe(900_000);
});

test('[S173] a record of past winds adds twelve expected minutes; winds that come half the time count half', () => {
  const minutesIn = (direction: (day: number) => number) => {
    // Each second hour: the others take the shares of their month.
    const rows = Array.from({ length: 364 * 12 }, (_, k) => {
      const time = new Date(Date.UTC(2025, 0, 1, 2 * k)).toISOString();
      return `${time},${direction(Math.floor(k / 12))},12`;
    });
    const record = recordFrom(['time,direction,speed_kt', ...rows].join('\n'), 'winds.csv', contents);
    if (!record.ok) throw new Error(record.reason);
    const few = asked('--side', '1500', '--cell', '100', ...hour);
    const answer = sweepJson(contents, few, at, null, null, pastUse(contents, record.value, []));
    if (!answer.ok) throw new Error(answer.reason);
    return answer.value.candidates.flatMap((c) => ('expectedMinutes' in c ? (c.expectedMinutes ?? []) : []));
  };
  const [west, east] = [minutesIn(() => 260), minutesIn(() => 80)];
  const mixed = minutesIn((day) => (day % 2 === 0 ? 260 : 80));
  expect(mixed.length % 12).toBe(0);
  expect(west[5]).toBeGreaterThan(0);
  // Months of 31 days have one more of the one than of the other.
  mixed.forEach((minutes, m) =>
    expect(Math.abs(minutes - ((west[m] ?? NaN) + (east[m] ?? NaN)) / 2)).toBeLessThan(
      0.04 * Math.max(1, west[m] ?? 0, east[m] ?? 0),
    ),
  );
  expect(recordFrom('a\n', 'winds.csv', contents)).toMatchObject({ ok: false });
});

test('[S174] wrong arguments say what was expected', () => {
  const why = (...args: readonly string[]) => {
    const read = readArguments(['survey.geojson', ...args], at);
    return read.ok ? 'ok' : read.reason;
  };
  expect(why('--side', '4000')).toBe('--side goes with --sweep only');
  expect(why('--sweep', '--cell', 'x')).toBe('--cell: expected a number above 0, got "x"');
  expect(why('--sweep', '--from', '2026-06-21T17:00:00Z')).toBe('--from and --to go together');
  expect(why('--sweep', '--from', 'now', '--to', '2026-06-21T17:00:00Z')).toMatch(
    /^--from: expected ISO 8601/,
  );
  const fine = sweepJson(contents, asked('--cell', '1', '--side', '20000'), at, null, null, null);
  expect(fine).toMatchObject({
    ok: false,
    reason: expect.stringMatching(/^--sweep: .*a cell of 12 m, over 12,000 m at most, will do/) as string,
  });
});
