import { expect, test } from 'vitest';
import { Answering } from '../../src/sweep/answering';
import { SweepClient, type Hand } from '../../src/sweep/client';
import type { SweepProgress } from '../../src/sweep/run';
import type { Request, Response } from '../../src/sweep/messages';
import type { SweepAsked } from '../../src/sweep/plan';
import { contentsOf, plainKit, plainSubject, runwayFeature } from '../support/contents';
import { thorough } from '../support/thorough';
import { seeded } from '../support/tolerance';

const contents = contentsOf(
  [
    runwayFeature(
      'main',
      [8.01, 50.02],
      [8.0205, 50.024],
      [
        { designator: '06', elevation: 112 },
        { designator: '24', elevation: 112 },
      ],
    ),
  ],
  { subjects: [plainSubject], kit: plainKit, site: { reference: [8.01, 50.02] } },
);
const asked: SweepAsked = {
  side: 600,
  cell: 30,
  hours: { from: Date.UTC(2026, 5, 21, 14), to: Date.UTC(2026, 5, 21, 16) },
  step: 3600,
  names: ['main/24/arrival'],
  wind: null,
  configuration: 0,
  at: 0,
};

/** Workers whose answers come when the test says so. */
class Hands {
  readonly all: Slow[] = [];
  readonly make = (): Hand => {
    const hand = new Slow();
    this.all.push(hand);
    return hand;
  };
  /** One answer of a worker that has any left, chosen by `random`; false when all are idle. */
  step(random: () => number): boolean {
    const busy = this.all.filter(({ waiting }) => waiting.length > 0);
    const hand = busy[Math.floor(random() * busy.length)];
    if (!hand) return false;
    hand.onmessage?.({ data: hand.waiting.shift() as Response });
    return true;
  }
  drain(random: () => number): void {
    while (this.step(random));
  }
}

class Slow implements Hand {
  readonly waiting: Response[] = [];
  readonly asked: Request[] = [];
  onmessage: Hand['onmessage'] = null;
  onerror: Hand['onerror'] = null;
  isTerminated = false;
  readonly #answering = new Answering(() => 0);

  postMessage(request: Request): void {
    this.asked.push(request);
    this.waiting.push(this.#answering.answer(structuredClone(request)).response);
  }
  terminate(): void {
    this.isTerminated = true;
  }
}

function asking(cores: number) {
  const hands = new Hands();
  const client = new SweepClient(hands.make, cores);
  const told: SweepProgress[] = [];
  const ask = (question: SweepAsked = asked) =>
    client.ask(contents, question, null, (progress) => void told.push({ ...progress }));
  return { hands, client, told, ask };
}

test('[S140] a question is answered coarse first, then finer, whatever worker is quicker', () => {
  const worths: string[] = [];
  for (const [cores, seed] of [
    [1, 1],
    [2, 2],
    [3, 3],
    [5, 4],
  ] as const) {
    const { hands, told, ask } = asking(cores);
    expect(ask().ok).toBe(true);
    hands.drain(seeded(seed));
    const last = told.at(-1);
    expect(told.map(({ share }) => share)).toEqual(told.map(({ share }) => share).toSorted((a, b) => a - b));
    const steps = [...new Set(told.map(({ fineness }) => fineness))].filter((f) => f !== null);
    expect(steps).toEqual([16, 8, 4, 2, 1]);
    expect(last?.share).toBe(1);
    expect(last?.proposed?.candidates.length).toBeGreaterThan(0);
    expect(last?.stride.every((s) => s > 0)).toBe(true);
    worths.push(JSON.stringify([...(last?.figures.worth ?? [])]));
    expect(told.filter(({ proposed, provisional }) => proposed !== null && !provisional)).toHaveLength(1);
    expect(last?.provisional).toBe(false);
  }
  expect(new Set(worths).size).toBe(1);
});

test('[S146] places are proposed before all cells are known, said to be a first list, and never from fewer cells than before', () => {
  for (let seed = 1; seed <= (thorough ? 5 : 2); seed++) {
    const { hands, told, ask } = asking(3);
    ask({ ...asked, cell: 24 });
    hands.drain(seeded(seed));
    const lists = told.filter(({ proposed }) => proposed !== null);
    expect(lists.length).toBeGreaterThan(1);
    expect(lists.map(({ provisional }) => provisional)).toEqual(lists.map((_, i) => i < lists.length - 1));
    expect(lists[0]?.share).toBeLessThan(0.3);
    const best = lists.map(({ proposed }) =>
      Math.max(...(proposed?.candidates ?? []).map(({ goodMinutes }) => goodMinutes)),
    );
    expect(best).toEqual(best.toSorted((a, b) => a - b));
    const requests = hands.all.flatMap(({ asked: list }) => list.filter(({ name }) => name === 'candidates'));
    expect(requests.length).toBeLessThanOrEqual(4);
  }
});

test('[S147] the workers are there before the question when they are told to be', () => {
  const { hands, client, ask } = asking(2);
  client.warm();
  expect(hands.all).toHaveLength(2);
  expect(hands.all.flatMap(({ asked: list }) => list)).toEqual([]);
  ask();
  expect(hands.all).toHaveLength(2);
});

test('[S141] a later question ends the earlier one: nothing of that is told any more, in any order of arrival', () => {
  for (let seed = 1; seed <= (thorough ? 6 : 3); seed++) {
    const random = seeded(seed);
    const { hands, told, ask } = asking(3);
    ask();
    for (let k = 0; k < Math.floor(random() * 25); k++) hands.step(random);
    told.length = 0;
    ask({ ...asked, cell: 60 });
    hands.drain(random);
    expect(told.every(({ plan }) => plan.area.cell === 60)).toBe(true);
    const last = told.at(-1);
    expect(last?.share).toBe(1);
    expect(last?.proposed).not.toBeNull();
    expect(last?.figures.worth).toHaveLength(100);
  }
});

test('[S142] cancelled, it tells nothing more, asks for nothing more, and takes the next question', () => {
  const { hands, client, told, ask } = asking(2);
  ask();
  for (let k = 0; k < 5; k++) hands.step(seeded(k + 1));
  client.cancel();
  told.length = 0;
  const before = hands.all.reduce((sum, hand) => sum + hand.asked.length, 0);
  hands.drain(seeded(3));
  expect(told).toEqual([]);
  expect(hands.all.reduce((sum, hand) => sum + hand.asked.length, 0)).toBe(before);
  ask();
  hands.drain(seeded(4));
  expect(told.at(-1)?.proposed).not.toBeNull();
  expect(hands.all.filter(({ isTerminated }) => !isTerminated)).toHaveLength(2);
});

test('[S143] what cannot be asked is told at once, and no worker hears of it', () => {
  const { hands, told, ask } = asking(2);
  const planned = ask({ ...asked, side: 20_000, cell: 1 });
  expect(planned).toMatchObject({ ok: false, about: 'cell' });
  expect(hands.all).toEqual([]);
  expect(told).toEqual([]);
});

test('[S144] a worker that breaks is said, once, and the next question begins with new ones', () => {
  const { hands, told, ask } = asking(2);
  ask();
  hands.all[1]?.onerror?.({});
  expect(told.at(-1)?.failed).toMatch(/stopped/);
  expect(hands.all.every(({ isTerminated }) => isTerminated)).toBe(true);
  const count = told.length;
  hands.drain(seeded(1));
  expect(told).toHaveLength(count);
  ask();
  hands.drain(seeded(2));
  expect(told.at(-1)?.proposed).not.toBeNull();
});

test('[S145] ground and survey are sent once, not with every question', () => {
  const { hands, ask } = asking(1);
  ask();
  hands.drain(seeded(1));
  ask();
  hands.drain(seeded(1));
  expect(hands.all[0]?.asked.filter(({ name }) => name === 'terrain')).toHaveLength(1);
  expect(hands.all[0]?.asked.filter(({ name }) => name === 'survey')).toHaveLength(1);
  expect(hands.all[0]?.asked.filter(({ name }) => name === 'ask')).toHaveLength(2);
});

test('[S340] a sketch comes before all else, and of it nothing is left once the first picture is whole', () => {
  const { hands, told, ask } = asking(2);
  ask();
  expect(hands.all[0]?.asked.map(({ name }) => name)).toEqual(['terrain', 'survey', 'ask', 'sketch']);
  expect(hands.all[1]?.asked.map(({ name }) => name)).toEqual(['terrain', 'survey', 'ask', 'cells']);
  while (told.length === 0) hands.step(() => 0);
  const first = told.at(-1);
  expect([first?.sketched, first?.fineness, first?.share]).toEqual([true, null, 0]);
  expect([...(first?.figures.worth ?? [])].some((worth) => worth > 0)).toBe(true);
  hands.drain(seeded(150));
  // What is known in the end is what is known without a sketch.
  const whole = new Answering(() => 0);
  const cells = Int32Array.from(first?.figures.cells ?? []);
  whole.answer({ id: 0, question: 0, name: 'survey', body: contents });
  whole.answer({ id: 0, question: 0, name: 'ask', body: asked });
  const { response } = whole.answer({ id: 1, question: 0, name: 'cells', body: { cells } });
  if (response.name !== 'cells') throw new Error('expected cells');
  const last = told.at(-1)?.figures;
  expect(last?.good).toEqual(response.body.figures.good);
  expect(last?.worth).toEqual(response.body.figures.worth);
});

test('[S341] a sketch that comes after the first picture changes nothing', () => {
  const { hands, told, ask } = asking(2);
  ask();
  // The second worker does all of the first level while the first one sketches.
  const other = hands.all[1];
  while (told.at(-1)?.fineness !== 16) other?.onmessage?.({ data: other.waiting.shift() as Response });
  const before = [...(told.at(-1)?.figures.worth ?? [])];
  const mine = hands.all[0];
  for (let k = 0; k < 4; k++) mine?.onmessage?.({ data: mine.waiting.shift() as Response });
  expect(told.at(-1)?.sketched).toBe(false);
  expect([...(told.at(-1)?.figures.worth ?? [])]).toEqual(before);
});

test('[S342] a sketch of an open field is near what the first picture says', () => {
  const { hands, told, ask } = asking(1);
  ask({
    ...asked,
    cell: 20,
    side: 2000,
    hours: { from: Date.UTC(2026, 5, 21, 5), to: Date.UTC(2026, 5, 21, 19) },
    step: 900,
  });
  let sketch: readonly number[] = [];
  while (hands.step(() => 0)) {
    const now = told.at(-1);
    if (now?.sketched && sketch.length === 0) sketch = [...now.figures.good];
    if (now?.fineness === 16) break;
  }
  const fine = told.at(-1);
  const known = [...(fine?.stride ?? [])].flatMap((stride, i) => (stride === 16 ? [i] : []));
  expect(known.length).toBeGreaterThan(30);
  // Of 57 instants; one stands for seven.
  const off = known.map((i) => Math.abs((sketch[i] ?? NaN) - (fine?.figures.good[i] ?? NaN)));
  expect(Math.max(...off)).toBeLessThan(21);
  expect(off.reduce((sum, each) => sum + each, 0) / off.length).toBeLessThan(4);
  expect(known.some((i) => (sketch[i] ?? 0) > 10)).toBe(true);
});

test('[S343] a later question does not wait for a list of places: who is at it is let go, and another takes its place', () => {
  const { hands, told, ask } = asking(1);
  ask();
  const isListing = () => hands.all[0]?.asked.at(-1)?.name === 'candidates';
  while (!isListing()) hands.step(() => 0);
  ask({ ...asked, step: 1800 });
  expect(hands.all.map(({ isTerminated }) => isTerminated)).toEqual([true, false]);
  expect(hands.all[1]?.asked.map(({ name }) => name)).toEqual(['terrain', 'survey', 'ask', 'sketch']);
  hands.drain(seeded(153));
  expect(told.at(-1)?.proposed?.candidates.length).toBeGreaterThan(0);
  expect(told.at(-1)?.plan.step).toBe(1800);
});

test('[S360] a question that was prepared has its sketch when it is asked, whenever that was ready, and ends as any other', () => {
  const plain = asking(2);
  plain.ask();
  plain.hands.drain(seeded(1));
  const usual = plain.told.at(-1)?.figures.worth;
  for (let answers = 0; answers <= 6; answers++) {
    const { hands, client, told, ask } = asking(2);
    client.prepare(contents, asked, null);
    client.prepare(contents, asked, null);
    for (let k = 0; k < answers; k++) hands.step(seeded(k + 1));
    expect(told).toEqual([]);
    const names = () => hands.all.flatMap(({ asked: list }) => list.map(({ name }) => name));
    expect(names().filter((name) => name === 'cells')).toEqual([]);
    // Told at once where it was ready; there are no more than eight messages to answer.
    const isReady = hands.all[0]?.waiting.every(({ name }) => name !== 'sketch') ?? false;
    expect(ask().ok).toBe(true);
    expect(told.map(({ sketched, fineness }) => [sketched, fineness])).toEqual(isReady ? [[true, null]] : []);
    hands.drain(seeded(7));
    expect(names().filter((name) => name === 'sketch')).toHaveLength(1);
    expect(told.at(-1)?.proposed).not.toBeNull();
    expect(told.at(-1)?.figures.worth).toEqual(usual);
  }
});

test('[S361] another question than the one prepared, or none: of what was prepared nothing is told, in any order of arrival', () => {
  for (let seed = 1; seed <= 4; seed++) {
    const random = seeded(seed);
    const { hands, client, told, ask } = asking(2);
    client.prepare(contents, asked, null);
    for (let k = 0; k < seed; k++) hands.step(random);
    if (seed % 2 === 0) client.cancel();
    ask({ ...asked, cell: 60 });
    hands.drain(random);
    expect(told.every(({ plan }) => plan.area.cell === 60)).toBe(true);
    expect(told.at(-1)?.proposed).not.toBeNull();
  }
});

test('[S362] to prepare a question leaves one that somebody listens to alone', () => {
  const { hands, client, told, ask } = asking(2);
  ask();
  for (let k = 0; k < 9; k++) hands.step(seeded(k + 1));
  client.prepare(contents, { ...asked, cell: 60 }, null);
  hands.drain(seeded(2));
  expect(told.every(({ plan }) => plan.area.cell === 30)).toBe(true);
  expect(told.at(-1)?.proposed).not.toBeNull();
});

test('[S363] a worker that breaks over a prepared question is replaced when it is asked', () => {
  const { hands, client, told, ask } = asking(2);
  client.prepare(contents, asked, null);
  hands.all[0]?.onerror?.({});
  expect(told).toEqual([]);
  ask();
  hands.drain(seeded(2));
  expect(told.at(-1)?.proposed).not.toBeNull();
  expect(told.every(({ failed }) => failed === null)).toBe(true);
});

test('[S364] asked once more what was asked before, a worker has it ready: the answer is the same', () => {
  const { hands, told, ask } = asking(1);
  ask();
  hands.drain(seeded(1));
  const before = told.at(-1);
  told.length = 0;
  ask();
  hands.drain(seeded(1));
  expect(told.at(-1)?.figures.worth).toEqual(before?.figures.worth);
  expect(told.at(-1)?.figures.goodByPath).toEqual(before?.figures.goodByPath);
  expect(told.at(-1)?.proposed).toEqual(before?.proposed);
});

test('[S367] workers hear of the cells that may be proposed only, and propose what they would of all', () => {
  const { hands, told, ask } = asking(2);
  ask();
  hands.drain(seeded(5));
  const last = told.at(-1);
  const requests = hands.all.flatMap(({ asked: list }) => list);
  const final = requests.findLast(({ name }) => name === 'candidates');
  if (!last || final?.name !== 'candidates') throw new Error('expected a last list');
  const { figures } = last;
  expect(final.body.figures.cells.length).toBeGreaterThan(0);
  expect(final.body.figures.cells.length).toBeLessThan(figures.cells.length);
  const whole = new Answering(() => 0);
  whole.answer({ id: 0, question: 0, name: 'survey', body: contents });
  whole.answer({ id: 0, question: 0, name: 'ask', body: asked });
  const { response } = whole.answer({ id: 1, question: 0, name: 'candidates', body: { figures } });
  expect(last.proposed).toEqual(response.body);
});

test('[S368] whatever was asked, prepared, ended or let go before, in any order of arrival: the last question is answered as if it were the only one', () => {
  const other = contentsOf(
    [
      runwayFeature(
        'main',
        [8.011, 50.021],
        [8.0215, 50.025],
        [
          { designator: '06', elevation: 112 },
          { designator: '24', elevation: 112 },
        ],
      ),
    ],
    { subjects: [plainSubject], kit: plainKit, site: { reference: [8.01, 50.02] } },
  );
  const questions = [
    { contents, asked: { ...asked, cell: 60 } },
    { contents, asked: { ...asked, cell: 50, step: 1800 } },
    { contents: other, asked: { ...asked, cell: 60 } },
  ] as const;
  const alone = questions.map((question) => {
    const { hands, client } = asking(1);
    let last: SweepProgress | undefined;
    client.ask(question.contents, question.asked, null, (progress) => (last = { ...progress }));
    hands.drain(seeded(1));
    return last;
  });
  for (let seed = 1; seed <= (thorough ? 40 : 6); seed++) {
    const random = seeded(seed);
    const { hands, client } = asking(3);
    // The last one is always asked; what was told under an earlier number must not come any more.
    let turn = 0;
    let last: SweepProgress | undefined;
    const stale: number[] = [];
    const ask = (i: number) => {
      const mine = ++turn;
      const question = questions[i] as (typeof questions)[number];
      client.ask(question.contents, question.asked, null, (progress) => {
        if (mine !== turn) stale.push(mine);
        last = { ...progress };
      });
    };
    const any = () => Math.floor(random() * questions.length);
    for (let k = 0; k < 8; k++) {
      const what = random();
      const question = questions[any()] as (typeof questions)[number];
      if (what < 0.4) ask(any());
      else if (what < 0.7) client.prepare(question.contents, question.asked, null);
      else if (what < 0.85) client.cancel();
      else client.close();
      for (let steps = Math.floor(random() * 12); steps > 0; steps--) hands.step(random);
    }
    const i = any();
    ask(i);
    hands.drain(random);
    expect(stale).toEqual([]);
    // The sum of worths is a bound only where nothing is good (`CellFigures`).
    for (const figure of ['worth', 'focal', 'light', 'good', 'goodByPath', 'ground'] as const)
      expect(last?.figures[figure]).toEqual(alone[i]?.figures[figure]);
    expect(last?.proposed).toEqual(alone[i]?.proposed);
    expect(last?.provisional).toBe(false);
  }
});
