import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { programmesOn } from '../../../src/figures/plan/acts-due';
import { dayPlan, moveTime, planRows, windFor } from '../../../src/figures/plan/day-plan';
import { otherFlows, type FlowSpan } from '../../../src/figures/plan/flow-spans';
import { insteadOf } from '../../../src/figures/plan/instead';
import { dueOn } from '../../../src/figures/movements/due-on';
import { spotFigures } from '../../../src/figures/spot-figures';
import { outlookOf } from '../../../src/figures/outlook';
import type { PlanWindow } from '../../../src/figures/plan/windows';
import { inUse } from '../../../src/figures/traffic/in-use';
import { readContents, type Contents } from '../../../src/survey/contents';
import { setMove } from '../../../src/survey/edits/set-plan';
import { setAccess } from '../../../src/survey/edits/set-properties';
import { clockAt, dayOf } from '../../../src/time/local-time';
import { opened } from '../../support/contents';

const zone = 'Europe/Warsaw';
const survey = opened(readFileSync('sample-sites/tolverby.geojson', 'utf8'));
const day = dayOf('2026-06-21', zone);
const clock = (instant: number) => clockAt(instant, zone);

function planOf(contents: Contents, configuration = 0, spans?: readonly FlowSpan[]) {
  const flow = inUse(contents, configuration);
  const used = spans ?? [{ ...day, arrivals: flow.arrivals, departures: flow.departures }];
  const others = otherFlows(contents, flow);
  const rows = planRows(contents, [...used, ...others], day, null);
  return { plan: dayPlan(contents, rows, used, day), rows, others, flow };
}

describe('the plan of a day at the sample site', () => {
  const contents = readContents(survey);
  const { plan, rows, others } = planOf(contents);

  test('[F260] follows the lit side: north at sunrise, south by day, north in the evening', () => {
    // What the notes of the sample site say, and its lit sides: south side 07:14 to 15:33, north side 16:40 to 21:05.
    const told = plan.stays.map(({ window }) => [window.row.spot.name, clock(window.from), clock(window.to)]);
    expect(told[0]?.[0]).toBe('Orchard Path, east end');
    expect(told.at(-1)?.[0]).toBe('Orchard Path, east end');
    const evening = plan.stays.at(-1)?.window;
    expect(Math.abs((evening?.from ?? 0) - Date.parse('2026-06-21T14:40:00Z'))).toBeLessThan(20 * 60_000);
    expect(evening?.ends).toBe('sun-down');
    expect(told.slice(1, -1).map(([name]) => name)).toEqual(['Mill Lane lay-by', 'Mill Lane lay-by']);
    // Nobody waits under the noon sun of June, which is 62 degrees up.
    const noon = Date.parse('2026-06-21T10:50:00Z');
    expect(plan.stays.some(({ window }) => window.from < noon && noon < window.to)).toBe(false);
    expect(plan.stays[1]?.window.ends).toBe('overhead');
  });

  test('[F261] ranks windows by worth, each as good throughout as it says, by the figures of its moments', () => {
    expect(plan.windows.length).toBeGreaterThan(5);
    plan.windows.slice(1).forEach((w, i) => expect(w.worth).toBeLessThanOrEqual(plan.windows[i]?.worth ?? 0));
    for (const { row, from, to, peak, best, score } of plan.windows.slice(0, 6)) {
      expect(peak).toBeGreaterThan(from);
      expect(peak).toBeLessThan(to);
      const totals = [];
      for (let t = from + 150_000; t < to; t += 1_500_000) {
        const [figures] = spotFigures(row.spot, [row.path], outlookOf(contents, null), [t]);
        const sample = figures?.paths[0]?.best;
        expect(sample?.glare).toBe(false);
        totals.push(sample?.score.total ?? NaN);
        if (t > from + 600_000 && t < to - 600_000) expect(sample?.score.total).toBeGreaterThan(0.59);
      }
      expect(best.score.total).toBeGreaterThanOrEqual(Math.max(...totals) - 0.01);
      expect(score.light).toBeLessThanOrEqual(1);
    }
  });

  test('[F262] moves in time: one leaves when the way still fits between two stays', () => {
    const moves = plan.stays.filter(({ move }) => move !== null);
    expect(moves.length).toBe(2);
    plan.stays.forEach(({ window, move }, i) => {
      const before = plan.stays[i - 1]?.window;
      if (before) expect(window.from).toBeGreaterThanOrEqual(before.to);
      if (!move || !before) return;
      expect(move.from).toBe(before.row.spot);
      expect(window.from - move.leave).toBe(move.minutes * 60_000);
      expect(move.leave).toBeGreaterThanOrEqual(before.to);
    });
  });

  test('[F263] when the wind turns: the other configuration, its wind, and where to go instead', () => {
    expect(others.map(({ name }) => name)).toEqual(['East wind']);
    const [east] = others;
    if (!east) throw new Error('expected a flow');
    expect(windFor(contents, east)).toBeCloseTo(73.1, 0);
    const turned = dayPlan(contents, rows, [{ ...day, ...east }], day);
    for (const { row } of turned.windows) expect(row.path.name).toMatch(/^07 /);
    const evening = plan.stays.at(-1);
    if (!evening) throw new Error('expected a stay');
    const { row, from, to } = evening.window;
    const instead = insteadOf(
      { spot: row.spot, from, to },
      turned,
      (spot) => moveTime(contents, row.spot, spot).minutes,
    );
    expect(instead?.window.row.path.name).toMatch(/^07 /);
    expect(instead?.from).toBeGreaterThanOrEqual(evening.window.from);
    expect(instead?.to).toBeLessThanOrEqual(evening.window.to);
  });

  test('[F264] never ranks a spot where nobody may stand, and marks those to ask about', () => {
    const orchard = 's5x9ht';
    const forbidden = planOf(readContents(setAccess(survey, orchard, { status: 'forbidden' }))).plan;
    const spots = (p: typeof plan) => [
      ...p.windows.map((w) => w.row.spot.id),
      ...p.stays.map((s) => s.window.row.spot.id),
    ];
    expect(spots(plan)).toContain(orchard);
    expect(spots(forbidden)).not.toContain(orchard);
    expect(forbidden.nobody.map(({ id }) => id)).toEqual([orchard]);
    const ask = planOf(readContents(setAccess(survey, orchard, { status: 'ask' }))).plan;
    const marked = ask.windows.filter(({ row }) => row.spot.id === orchard);
    expect(marked.length).toBeGreaterThan(0);
    expect(marked.every(({ row }) => row.standing === 'check-first')).toBe(true);
  });

  test('[F265] stays where it is when the way takes too long', () => {
    const ids = contents.spots.map(({ id }) => id);
    let far = survey;
    for (const a of ids) for (const b of ids) if (a < b) far = setMove(far, a, b, 600);
    const { stays } = planOf(readContents(far)).plan;
    expect(new Set(stays.map(({ window }) => window.row.spot.id)).size).toBe(1);
  });

  test('[F266] follows a forecast: no window while its end is not in use', () => {
    const [west, east] = [inUse(contents, 0), inUse(contents, 1)];
    const turn = day.from + 10 * 3_600_000;
    const { windows } = planOf(contents, 0, [
      { from: day.from, to: turn, arrivals: west.arrivals, departures: west.departures },
      { from: turn, to: day.to, arrivals: east.arrivals, departures: east.departures },
    ]).plan;
    const step = 5 * 60_000;
    expect(windows.length).toBeGreaterThan(2);
    for (const { row, from, to } of windows) {
      if (row.path.ref.end === 1) expect(to).toBeLessThanOrEqual(turn + step);
      else expect(from).toBeGreaterThanOrEqual(turn - step);
    }
    expect(windows.some((w) => w.ends === 'flow')).toBe(true);
  });
});

describe('what is due', () => {
  const lists = (...movements: readonly object[]) =>
    readContents({ ...survey, sunside: { ...survey.sunside, movements: movements as never } });
  const plan = (contents: Contents) => {
    const flow = inUse(contents, 0);
    const spans = [{ ...day, arrivals: flow.arrivals, departures: flow.departures }];
    const due = dueOn(contents.movements, '2026-06-21', zone);
    return dayPlan(contents, planRows(contents, spans, day, null), spans, day, due);
  };
  const movement = { id: 'm1', time: '09:30', use: 'departure', type: 'A320', runway: '', starred: true };

  test('[F268] stands in the windows of its path, and makes them worth more', () => {
    const [without, listed] = [plan(lists()), plan(lists(movement))];
    const of = (p: ReturnType<typeof plan>, name: string) =>
      p.windows.filter((w) => w.row.spot.name === 'Car park, top deck' && w.row.path.name === name);
    const [before, after] = [of(without, '25 departure')[0], of(listed, '25 departure')[0]];
    expect(after?.due.map(({ movement: m }) => m.id)).toEqual(['m1']);
    // Twenty minutes count four times instead of once, at no more than 1 each.
    expect((after?.worth ?? 0) - (before?.worth ?? 0)).toBeGreaterThan(0.5);
    expect((after?.worth ?? 0) - (before?.worth ?? 0)).toBeLessThanOrEqual(1.25);
    expect(of(listed, '25 arrival')[0]?.worth).toBe(of(without, '25 arrival')[0]?.worth);
  });

  test('[F269] is nothing for an end that is not its own', () => {
    const other = plan(lists({ ...movement, runway: '07' }));
    expect(other.windows.every(({ due }) => due.length === 0)).toBe(true);
    const own = plan(lists({ ...movement, runway: '25' }));
    expect(own.windows.some(({ due }) => due.length === 1)).toBe(true);
  });
});

describe('a programme', () => {
  /** The sample site with passes along its display line, and another programme. */
  const shown = (programme: readonly object[], more: object = {}) =>
    readContents({
      ...survey,
      features: survey.features.map((feature) =>
        feature.properties?.['kind'] === 'display-line'
          ? { ...feature, properties: { ...feature.properties, passes: ['level'], programme, ...more } }
          : feature,
      ) as never,
    });
  const windowsOf = (contents: Contents, date = '2026-06-21') => {
    const whole = dayOf(date, zone);
    const spans = [{ ...whole, arrivals: [], departures: [] }];
    const programmes = programmesOn(contents, date);
    const rows = planRows(contents, spans, whole, null, programmes);
    const plan = dayPlan(contents, rows, spans, whole, [], programmes);
    return { ...plan, windows: plan.windows.filter(({ row }) => row.path.ref.kind === 'pass') };
  };
  const jet = { time: '18:20', to: '18:40', name: 'Solo jet' };

  test('[F1096] windows of a display stand where its acts are flown, with them, and its ladder too', () => {
    const { windows, stays } = windowsOf(shown([jet]));
    expect(windows.length).toBeGreaterThan(0);
    for (const { from, to, acts, ends } of windows) {
      expect([clock(from), clock(to)]).toEqual(['18:15', '18:45']);
      expect(acts.map(({ act }) => act.entry.name)).toEqual(['Solo jet']);
      expect(acts[0]?.light?.until).toBeGreaterThan(from);
      expect(ends).toBe('programme');
    }
    expect(stays.some(({ window }) => window.acts.length === 1)).toBe(true);
  });

  test('[F1097] arguable: late by 20 minutes the windows move with it, and only on that day', () => {
    const contents = shown([jet], { late: { date: '2026-06-21', minutes: 20 } });
    expect(clock(windowsOf(contents).windows[0]?.from ?? 0)).toBe('18:35');
    expect(clock(windowsOf(contents, '2026-06-22').windows[0]?.from ?? 0)).toBe('18:15');
  });

  test('[F1104] act by act, each once, in order of time, at the window that is worth most', () => {
    const { acts, windows } = windowsOf(shown([{ ...jet, time: '19:20', to: '19:40' }, jet]));
    expect(acts.map(({ act }) => act.entry.time)).toEqual(['18:20', '19:20']);
    for (const { act, window } of acts)
      for (const other of windows)
        if (other.acts.some((due) => due.act === act))
          expect(other.worth).toBeLessThanOrEqual(window?.worth ?? NaN);
  });

  test('[F1098] arguable: without any times it may be flown all day; what has no time makes no window among those that have', () => {
    const open = windowsOf(shown([{ name: 'Some time' }])).windows;
    expect(open.some(({ from, to }) => to - from > 3_600_000)).toBe(true);
    const mixed = windowsOf(shown([jet, { name: 'Some time' }])).windows;
    expect(mixed.every(({ acts }) => acts.length === 1)).toBe(true);
  });

  test('[F1109] arguable: with all its acts on Sunday nobody is sent to the display line on Saturday', () => {
    const sunday = shown([{ ...jet, date: '2026-06-21' }]);
    expect(windowsOf(sunday).windows.length).toBeGreaterThan(0);
    expect(windowsOf(sunday, '2026-06-20').windows).toEqual([]);
  });

  const atHand = readContents(survey).subject.key;
  const named = (acts: readonly { readonly act: { readonly entry: { readonly name: string } } }[]) =>
    acts.map(({ act }) => act.entry.name);
  /** mm where each pass is nearest to each spot. */
  const needed = (windows: readonly PlanWindow[]) =>
    new Map(
      windows.map(({ row: { spot, path, view } }) => [
        `${spot.id} ${path.ref.path}`,
        view.focal[view.closest],
      ]),
    );

  test('[F1110] arguable: a small jet among airliners is framed as the small jet it is, not for the aircraft at hand', () => {
    const unsaid = windowsOf(shown([jet]));
    const typed = windowsOf(shown([{ ...jet, type: 'F-16' }]));
    expect(new Set(unsaid.windows.map(({ row }) => row.subject.key))).toEqual(new Set([atHand]));
    expect(typed.windows.length).toBeGreaterThan(0);
    for (const { row } of typed.windows) expect(row.subject.name).toContain('F-16');
    // 15.1 m long against the 37.6 m of the one at hand: from the same place it takes a lens that much longer.
    const [small, large] = [needed(typed.windows), needed(unsaid.windows)];
    const both = [...small.keys()].filter((key) => large.has(key));
    expect(both.length).toBeGreaterThan(0);
    for (const key of both) {
      const ratio = (small.get(key) ?? NaN) / (large.get(key) ?? NaN);
      expect(ratio).toBeGreaterThan(2);
      expect(ratio).toBeLessThan(3);
    }
    expect(typed.acts.map(({ window }) => window?.row.subject.name)).toEqual([
      typed.windows[0]?.row.subject.name,
    ]);
  });

  test('[F1111] arguable: a type that nobody knows still has its hour and its light, framed for the aircraft at hand', () => {
    const { windows, acts } = windowsOf(shown([{ ...jet, type: 'Zorblatt 3' }]));
    expect(windows.length).toBeGreaterThan(0);
    expect(windows.every(({ row }) => row.subject.key === atHand)).toBe(true);
    expect(acts.map(({ act }) => act.type.kind)).toEqual(['unknown']);
  });

  test('[F1122] arguable: what no spot is worth waiting at for still stands in the programme, without a window; unless nobody looks at its passes', () => {
    const night = { time: '23:20', name: 'Night show' };
    const { acts } = windowsOf(shown([jet, night]));
    expect(acts.map(({ act, window }) => [act.entry.name, window !== null])).toEqual([
      ['Solo jet', true],
      ['Night show', false],
    ]);
    expect(windowsOf(shown([jet, night], { passes: [] })).acts).toEqual([]);
  });

  test('[F1112] arguable: two at once are two windows, each with its own lens; the ladder stands for one at a time', () => {
    const { windows, acts, stays } = windowsOf(
      shown([
        { ...jet, type: 'F-16' },
        { ...jet, name: 'Old airliner' },
      ]),
    );
    for (const { row, acts: due } of windows)
      expect(named(due)).toEqual([row.subject.key === atHand ? 'Old airliner' : 'Solo jet']);
    expect(new Set(windows.flatMap(({ acts: due }) => named(due)))).toEqual(
      new Set(['Solo jet', 'Old airliner']),
    );
    expect(acts.length).toBe(2);
    const keys = windows.map(({ row, from }) => `${row.key} ${from}`);
    expect(new Set(keys).size).toBe(keys.length);
    stays
      .slice(1)
      .forEach(({ window }, i) => expect(window.from).toBeGreaterThanOrEqual(stays[i]?.window.to ?? 0));
  });
});

describe('flows that may come instead', () => {
  test('[F267] without configurations the same runways the other way round, closed ends left out', () => {
    const runways = [
      { id: 'a', ends: [{ closed: false }, { closed: false }] },
      { id: 'b', ends: [{ closed: true }, { closed: false }] },
    ] as unknown as Contents['runways'];
    const now = {
      arrivals: [{ runway: 'a', end: 0 as const }],
      departures: [{ runway: 'b', end: 1 as const }],
    };
    expect(otherFlows({ configurations: [], runways }, now)).toEqual([
      { name: '', arrivals: [{ runway: 'a', end: 1 }], departures: [] },
    ]);
  });
});
