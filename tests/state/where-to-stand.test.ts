import { describe, expect, test } from 'vitest';
import { groundsOf, placeQuestion, questionOf } from '../../src/state/place-question';
import { Hand } from '../../src/state/view.svelte';
import { WhereToStand, type Sweeper } from '../../src/state/where-to-stand.svelte';
import type { Proposed } from '../../src/sweep/candidates';
import type { SweepProgress } from '../../src/sweep/run';
import { planSweep, type SweepAsked } from '../../src/sweep/plan';
import type { Contents } from '../../src/survey/contents';
import { contentsOf, plainKit, plainSubject, runwayFeature } from '../support/contents';

const ends = [{ designator: '06' }, { designator: '24' }] as const;
const survey = (east: number): Contents =>
  contentsOf([runwayFeature('main', [8.01, 50.02], [east, 50.024], [...ends])], {
    subjects: [plainSubject],
    kit: plainKit,
    site: { reference: [8.01, 50.02] },
  });

/** Answers when the test says so. */
class Slow implements Sweeper {
  readonly questions: { asked: SweepAsked; told: (progress: SweepProgress) => void; contents: Contents }[] =
    [];
  closed = false;
  ask: Sweeper['ask'] = (contents, asked, _terrain, told) => {
    this.questions.push({ asked, told, contents });
    return planSweep(contents, asked, null);
  };
  cancel(): void {
    // The next question does.
  }
  close(): void {
    this.closed = true;
  }
  tell(question: number, told: Partial<SweepProgress>): void {
    const q = this.questions[question];
    const planned = q && planSweep(q.contents, q.asked, null);
    if (!q || !planned?.ok) throw new Error('expected a question that can be answered');
    q.told({
      plan: planned.plan,
      figures: {} as SweepProgress['figures'],
      stride: new Uint8Array(0),
      fineness: null,
      sketched: false,
      share: 0,
      proposed: null,
      provisional: false,
      failed: null,
      ...told,
    });
  }
}

function scene(contents = survey(8.0205)) {
  const figures = {
    contents,
    terrain: null,
    day: { instantA: Date.UTC(2026, 5, 21, 8), instantB: Date.UTC(2026, 5, 21, 17) },
    flow: { inUse: { arrivals: [{ runway: 'main', end: 1 }], departures: [] } },
  };
  const sweeper = new Slow();
  const hand = new Hand();
  const make = () => new WhereToStand(figures as never, hand, sweeper, () => 0);
  return { figures, sweeper, hand, make };
}
const proposed = { candidates: [], none: 'nothing-good' } as const;

describe('where to stand follows', () => {
  test('[P20] asks for the paths of the ends in use, and shows nothing before the first picture is whole', () => {
    const { sweeper, make } = scene();
    const where = make();
    where.follow();
    expect(sweeper.questions.map(({ asked }) => asked.names)).toEqual([['main/24/arrival']]);
    sweeper.tell(0, { share: 0.001 });
    expect(where.shown).toBeNull();
    sweeper.tell(0, { fineness: 16, share: 0.01 });
    expect([where.shown?.progress.fineness, where.busy]).toEqual([16, true]);
    sweeper.tell(0, { fineness: 1, share: 1, proposed });
    expect([where.busy, where.proposed?.none]).toEqual([false, 'nothing-good']);
  });

  test('[P21] what an earlier question still tells is dropped, in whichever order it comes', () => {
    const { sweeper, make } = scene();
    const where = make();
    where.follow();
    sweeper.tell(0, { fineness: 16 });
    where.hours = 'morning';
    where.follow();
    sweeper.tell(0, { fineness: 1, proposed });
    expect([where.proposed, where.shown?.progress.fineness]).toEqual([null, 16]);
    sweeper.tell(1, { fineness: 1, proposed });
    expect(where.proposed).not.toBeNull();
    sweeper.tell(0, { failed: 'late' });
    expect(where.failed).toBeNull();
  });

  test('[P22] while dragging a question comes to its first picture before the newest is asked', () => {
    const { sweeper, hand, make } = scene();
    const where = make();
    hand.dragging = 'o';
    where.follow();
    where.hours = 'morning';
    where.follow();
    where.hours = 'afternoon';
    where.follow();
    expect(sweeper.questions).toHaveLength(1);
    sweeper.tell(0, { fineness: 16 });
    expect(sweeper.questions).toHaveLength(2);
    const [, last] = sweeper.questions;
    expect(last?.asked.hours?.to).toBeGreaterThan(Date.UTC(2026, 5, 21, 18));
    // Let go: asked at once.
    hand.dragging = null;
    where.follow();
    expect(sweeper.questions).toHaveLength(3);
  });

  test('[P23] without a runway, a lens or an end in use it says which', () => {
    const empty = (contents: Contents) => {
      const where = scene(contents).make();
      where.follow();
      return where.refused?.about;
    };
    expect(empty(contentsOf([], { kit: plainKit }))).toBe('runways');
    const none = scene();
    none.figures.flow.inUse.arrivals = [];
    const where = none.make();
    where.follow();
    expect([where.refused?.about, where.busy]).toEqual(['paths', false]);
  });

  test('[P25] a first list is shown while the question is still being answered, and the last one ends it', () => {
    const { sweeper, make } = scene();
    const where = make();
    where.follow();
    const some = { candidates: [{ way: 'Mill Lane' }], none: null } as unknown as Proposed;
    sweeper.tell(0, { fineness: 8, share: 0.02, proposed: some, provisional: true });
    expect([where.busy, where.provisional, where.candidates.length]).toEqual([true, true, 1]);
    sweeper.tell(0, { fineness: 1, share: 1, proposed: some });
    expect([where.busy, where.provisional, where.candidates.length]).toEqual([false, false, 1]);
  });

  test('[P47] what is worked out before the view is opened is what it asks first', () => {
    const { figures, sweeper, make } = scene();
    const foreseen = questionOf(figures as never, 'day');
    make().follow();
    expect(sweeper.questions[0]?.asked).toEqual(foreseen);
    expect(sweeper.questions[0]?.contents).toBe(figures.contents);
  });

  test('[P61] it asks anew when what else is flown, or where nobody may stand for it, is moved; not for a name or a log', () => {
    const { figures } = scene();
    const { contents } = figures;
    const before = groundsOf(contents);
    const isAsked = (changed: Partial<Contents>) => {
      const after = groundsOf({ ...contents, ...changed });
      return after.length !== before.length || after.some((ground, i) => ground !== before[i]);
    };
    expect([
      isAsked({ displayLines: [] }),
      isAsked({ crowdLines: [] }),
      isAsked({ helipads: [] }),
      isAsked({ winchRuns: [] }),
    ]).toEqual([true, true, true, true]);
    expect([isAsked({ logEntries: [] }), isAsked({ movements: [] })]).toEqual([false, false]);
  });

  test('[P48] a sketch that is there already is shown with the question, and while something is dragged the next one need not wait', () => {
    const { sweeper, hand, make } = scene();
    const ask = sweeper.ask;
    sweeper.ask = (...question) => {
      const planned = ask(...question);
      sweeper.tell(sweeper.questions.length - 1, { sketched: true });
      return planned;
    };
    const where = make();
    hand.dragging = 'o';
    where.follow();
    expect([where.sketch, where.busy, where.proposed]).toEqual([true, true, null]);
    where.hours = 'morning';
    where.follow();
    expect(sweeper.questions).toHaveLength(2);
  });

  test('[P24] closing lets the workers go, and nothing is heard any more', () => {
    const { sweeper, make } = scene();
    const where = make();
    where.follow();
    where.close();
    sweeper.tell(0, { fineness: 1, proposed });
    expect([sweeper.closed, where.proposed]).toEqual([true, null]);
  });
});

test('[P26] two moments at one instant, no day at all: the question always has an instant, and none at all is refused in words', () => {
  const contents = survey(8.0205);
  const instant = Date.UTC(2026, 5, 21, 8);
  const inUse = { arrivals: [{ runway: 'main', end: 1 as const }], departures: [] };
  const question = placeQuestion({
    contents,
    inUse: inUse,
    hours: 'moments',
    instantA: instant,
    instantB: instant,
    terrain: null,
  });
  const planned = planSweep(contents, question, null);
  expect(planned.ok && planned.plan.instants).toEqual([instant]);
  expect(planSweep(contents, { ...question, hours: { from: instant, to: instant } }, null)).toMatchObject({
    ok: false,
    about: 'hours',
  });
});
