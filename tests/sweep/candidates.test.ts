import { expect, test } from 'vitest';
import { groundLine } from '../../src/figures/geometry/earth';
import { outlookOf } from '../../src/figures/outlook';
import { spotFigures } from '../../src/figures/spot-figures';
import type { Contents } from '../../src/survey/contents';
import { spotThere } from '../../src/figures/spot/spot-there';
import { candidatesOf } from '../../src/sweep/candidates';
import { planSweep, type SweepAsked } from '../../src/sweep/plan';
import { Sweep } from '../../src/sweep/sweep';
import { contentsOf, feature, plainKit, plainSubject, runwayFeature } from '../support/contents';

const usual: SweepAsked = {
  side: 3000,
  cell: 50,
  hours: { from: Date.UTC(2026, 5, 21, 5), to: Date.UTC(2026, 5, 21, 19) },
  step: 7200,
  names: null,
  wind: null,
  configuration: 0,
  at: Date.UTC(2026, 5, 21, 12),
};
const runway = runwayFeature(
  'main',
  [8.01, 50.02],
  [8.0305, 50.021],
  [
    { designator: '08', elevation: 112 },
    { designator: '26', elevation: 112 },
  ],
);
const lane = feature(
  'lane',
  'ground-use',
  'LineString',
  [
    [8.0, 50.0155],
    [8.04, 50.0165],
  ],
  {
    use: 'road',
    name: 'Mill Lane',
  },
);
const field = (features: readonly unknown[] = [], sunside = {}) =>
  contentsOf([runway, ...features], {
    subjects: [plainSubject],
    kit: plainKit,
    site: { reference: [8.01, 50.02], timeZone: 'Europe/Berlin' },
    ...sunside,
  });

function proposed(contents: Contents, asked: SweepAsked = usual) {
  const planned = planSweep(contents, asked, null);
  if (!planned.ok) throw new Error(planned.reason);
  const { plan } = planned;
  const sweep = new Sweep(contents, plan, null);
  const figures = sweep.figuresOf(Int32Array.from({ length: plan.area.count ** 2 }, (_, i) => i));
  return { ...candidatesOf(sweep, figures), plan, figures };
}

/** One question for what several tests look at: it is most of what they take. */
const withLane = field([lane]);
const answered = lazily(() => proposed(withLane));

function lazily<T>(make: () => T): () => T {
  let made: T | undefined;
  return () => (made ??= make());
}

test('[S160] the list offers different places, open ground first, at most twelve, at most three on one way', () => {
  const { candidates } = answered();
  expect(candidates.length).toBeGreaterThan(4);
  expect(candidates.length).toBeLessThanOrEqual(12);
  candidates.forEach((a, i) =>
    candidates.slice(0, i).forEach((b) => {
      // Moving within its cell can bring two a cell nearer.
      expect(groundLine(a.position, b.position).distance).toBeGreaterThan(300 - 75);
    }),
  );
  const order = candidates.map(({ ground }) => (ground === 'open' ? 0 : 1));
  expect(order).toEqual(order.toSorted());
  const onLane = candidates.filter(({ way }) => way === 'Mill Lane');
  expect(onLane.length).toBeGreaterThan(0);
  expect(onLane.length).toBeLessThanOrEqual(3);
});

test('[S161] each path has its best place among them', () => {
  const { candidates, plan, figures } = answered();
  plan.paths.forEach(({ ref }, p) => {
    const most = Math.max(
      ...[...figures.cells].map((_, k) =>
        figures.ground[k] === 2 ? 0 : (figures.goodByPath[k * plan.paths.length + p] ?? 0),
      ),
    );
    const best = Math.max(
      ...candidates.map((c) => c.paths.find(({ path }) => path === ref.path)?.goodMinutes ?? 0),
    );
    expect(best).toBe((most * plan.step) / 60);
  });
});

test('[S162] what is said of a place is what figures say of a spot there', () => {
  const contents = withLane;
  const { candidates, plan } = answered();
  for (const candidate of candidates.slice(0, 4)) {
    const spot = spotThere(candidate.position, null);
    const seen = spotFigures(spot, plan.paths, outlookOf(contents, null), plan.instants);
    const totals = seen.map(({ paths }) => Math.max(...paths.map(({ best }) => best.score.total)));
    expect(candidate.worth).toBeCloseTo(Math.max(...totals), 9);
    expect(plan.instants.indexOf(candidate.bestInstant)).toBe(totals.indexOf(Math.max(...totals)));
    for (const { path, from, to, goodMinutes } of candidate.paths) {
      expect(from).toBeLessThan(to);
      expect(goodMinutes * 60_000).toBeLessThanOrEqual(to - from);
      expect(plan.paths.map(({ ref }) => ref.path)).toContain(path);
    }
  }
});

test('[S163] a field that forbids photography: nothing is proposed, and it is said', () => {
  const { candidates, none } = proposed(field([lane], { rules: { photography: 'forbidden' } }), {
    ...usual,
    side: 500,
  });
  expect(candidates).toEqual([]);
  expect(none).toBe('forbidden-by-field');
});

test('[S197] outside the field’s hours no minute is good: its mornings only', () => {
  const { candidates, plan } = proposed(
    field([lane], { rules: { photography: 'allowed', hours: 'Mo-Su 06:00-12:00' } }),
    { ...usual, side: 1500, step: 3600 },
  );
  expect(candidates.length).toBeGreaterThan(0);
  // Berlin is two hours ahead in June.
  const noon = Date.UTC(2026, 5, 21, 10);
  for (const { goodMinutes, paths } of candidates) {
    expect(goodMinutes).toBeLessThanOrEqual(5 * 60);
    for (const { to } of paths) expect(to).toBeLessThanOrEqual(noon);
  }
  expect(plan.instants.some((instant) => instant >= noon)).toBe(true);
});

test('[S164] a day on which nothing is good proposes nothing: at night', () => {
  const night = { from: Date.UTC(2026, 11, 21, 22), to: Date.UTC(2026, 11, 22, 2) };
  expect(proposed(field([lane]), { ...usual, hours: night })).toMatchObject({
    candidates: [],
    none: 'nothing-good',
  });
});

test('[S165] what cannot be asked says what is wrong and the mend', () => {
  const why = (asked: Partial<SweepAsked>, contents = field()) => {
    const planned = planSweep(contents, { ...usual, ...asked }, null);
    return planned.ok ? 'ok' : `${planned.about}: ${planned.reason}`;
  };
  expect(why({}, contentsOf([]))).toMatch(/^runways: .*draw one first/);
  const bare = field();
  expect(why({}, { ...bare, kit: { ...bare.kit, lenses: [] } })).toMatch(/^lenses: .*add one/);
  expect(why({ names: ['main/08/arrival', 'nowhere'] })).toMatch(/^paths: .*"nowhere"/);
  expect(why({ hours: { from: 10, to: 10 } })).toMatch(/^hours: there is no instant/);
  expect(why({ cell: 1, side: 20_000 })).toMatch(
    /^cell: 20,000 m at 1 m are 400,000,000 cells: some 7 hours and 25,600 MB; a cell of 12 m, over 12,000 m at most, will do/,
  );
  // What is said of a side that nobody named is said of the one that would be taken.
  expect(why({ cell: 1, side: null })).toMatch(/^cell: 4,4\d\d m at 1 m .*a cell of 5 m will do/);
  for (const asked of [
    { cell: 1, side: 20_000 },
    { cell: 1, side: null },
  ]) {
    const [, metres] = /a cell of (\d+) m/.exec(why(asked)) ?? [];
    const side = asked.side && 12_000;
    expect(why({ cell: Number(metres), side })).toBe('ok');
  }
  expect(why({ cell: 3 })).toMatch(/^cell: .*5 to 100 m/);
  expect(why({ side: 13_000 })).toMatch(/^side: .*12,000 m/);
  const pole = contentsOf(
    [runwayFeature('p', [10, 89.5], [11, 89.5], [{ designator: '09' }, { designator: '27' }])],
    { subjects: [plainSubject], kit: plainKit, site: { reference: [10, 89.5] } },
  );
  expect(why({}, pole)).toMatch(/^pole: /);
  const far = contentsOf(
    [runwayFeature('f', [179.99, 10], [-179.99, 10], [{ designator: '09' }, { designator: '27' }])],
    { subjects: [plainSubject], kit: plainKit, site: { reference: [179.99, 10] } },
  );
  expect(why({}, far)).toMatch(/^antimeridian: /);
});

test('[S359] the lens named frames all that is good at a place where one of the kit does; where it frames a part, that is said', () => {
  const { candidates } = answered();
  const { lenses, fill } = plainKit;
  // From three quarters of the wanted share of the frame up to all of it.
  const serves = (lens: (typeof lenses)[number], mm: number) =>
    [1, ...(lens.extenders ?? [])].some(
      (x) => mm >= fill * lens.shortest * x - 1e-6 && mm <= (lens.longest * x) / 0.75 + 1e-6,
    );
  const all = (lens: (typeof lenses)[number], { paths }: (typeof candidates)[number]) =>
    paths.every(({ focal }) => serves(lens, focal.shortest) && serves(lens, focal.longest));
  let both = 0;
  for (const candidate of candidates) {
    const named = lenses.find(({ key }) => key === candidate.lens?.key);
    if (!named || candidate.focalLength === null) continue;
    expect(candidate.lens?.throughout).toBe(all(named, candidate));
    const [first] = lenses;
    const isBetterSecond = first && !all(first, candidate) && lenses.some((lens) => all(lens, candidate));
    // The first of the kit fits at its best, but not throughout: the other goes.
    if (isBetterSecond && serves(first, candidate.focalLength)) {
      expect(named.key).toBe('long');
      both++;
    }
  }
  expect(both).toBeGreaterThan(0);
});

test('[S1081] the side is that of a runway which is photographed, not of another one whose line runs nearer by', () => {
  // Across the middle of the main runway, and on nobody's list of paths.
  const cross = runwayFeature(
    'cross',
    [8.02, 50.012],
    [8.0195, 50.029],
    [
      { designator: '18', elevation: 112 },
      { designator: '36', elevation: 112 },
    ],
  );
  const names = ['main/26/arrival', 'main/26/departure'];
  const { candidates } = proposed(field([lane, cross]), { ...usual, names });
  expect(candidates.length).toBeGreaterThan(2);
  for (const { side, position } of candidates)
    expect(side, position.join()).toBe(position[1] > 50.0205 ? 'north' : 'south');
});
