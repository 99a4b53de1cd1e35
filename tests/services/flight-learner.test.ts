import { describe, expect, test } from 'vitest';
import { learnFrom, type Learned } from '../../src/figures/flown/learn';
import { isRecorded, packing, unpacked } from '../../src/figures/flown/packed-flights';
import { FlightLearner, type LearningHand } from '../../src/services/flight-learner';
import { LearningDesk } from '../../src/services/learning-desk';
import type { LearningAnswer, LearningRequest } from '../../src/services/learning-messages';
import { contentsOf } from '../support/contents';
import { arrivalOf24, departureOf06, madeFlight, madeRunway } from '../support/made-flights';

const arrival = { glide: 3.2, crossing: 21, speed: 66, offset: 4, rolling: 5, noise: 1 };
const departure = { liftOff: 1280, gradient: 0.09, speed: 74, rolling: 5, noise: 1 };
const contents = contentsOf([
  madeRunway.feature,
  ...Array.from({ length: 6 }, (_, i) => madeFlight(`a${i}`, arrivalOf24({ ...arrival, seed: i + 1 }))),
  ...Array.from({ length: 5 }, (_, i) =>
    madeFlight(`d${i}`, departureOf06({ ...departure, seed: i + 1 }), i % 2 === 0),
  ),
]);
const fewer = { ...contents, flightPaths: contents.flightPaths.slice(0, 6) };

/** A worker that answers when it is told to, in slices as long as `slow` says. */
class Hand implements LearningHand {
  onmessage: LearningHand['onmessage'] = null;
  onerror: LearningHand['onerror'] = null;
  isTerminated = false;
  readonly jobs: LearningRequest['job'][] = [];
  readonly answers: LearningAnswer[] = [];
  readonly #waiting: (() => void)[] = [];
  #clock = 0;
  readonly #desk = new LearningDesk({
    post: (answer) => this.answers.push(answer),
    breathe: () => new Promise((go) => this.#waiting.push(go)),
    // Every look at the clock is a slice later, so that each step is one.
    now: () => (this.#clock += 100),
  });
  postMessage(request: LearningRequest): void {
    this.jobs.push(request.job);
    void this.#desk.hear(structuredClone(request));
  }
  terminate(): void {
    this.isTerminated = true;
  }
  /** Goes on until nothing waits any more. */
  async goOn(): Promise<void> {
    while (this.#waiting.length > 0) {
      this.#waiting.shift()?.();
      await Promise.resolve();
      await Promise.resolve();
    }
  }
  tell(): void {
    for (const answer of this.answers.splice(0)) this.onmessage?.({ data: answer });
  }
}

function made() {
  const hands: Hand[] = [];
  const learner = new FlightLearner({
    make: () => {
      const hand = new Hand();
      hands.push(hand);
      return hand;
    },
    breathe: () => Promise.resolve(),
    now: () => 0,
  });
  return { hands, learner, hand: () => hands.at(-1) as Hand };
}
const settled = async () => {
  for (let i = 0; i < 5; i++) await Promise.resolve();
};

test('[L80] packed flights come back as they were, with and without times', () => {
  const recorded = contents.flightPaths.filter(isRecorded);
  const steps = packing(recorded);
  let step = steps.next();
  while (!step.done) step = steps.next();
  expect(unpacked(structuredClone(step.value))).toEqual(
    recorded.map(({ id, line, heights, times }) => ({ id, line, heights, times })),
  );
});

describe('[L81] learning in a worker', () => {
  test('teaches what it teaches on the page, and says how far it is', async () => {
    const { learner, hand } = made();
    const shares: number[] = [];
    const answer = learner.learn(contents, (share) => shares.push(share));
    await settled();
    await hand().goOn();
    hand().tell();
    expect(await answer).toEqual(learnFrom(contents));
    expect(shares.length).toBeGreaterThan(5);
    expect(shares.slice(0, 11)).toEqual(shares.slice(0, 11).toSorted((a, b) => a - b));
  });

  test('the flights go over once; a moved runway asks without them', async () => {
    const { learner, hand } = made();
    for (const elevation of [186, 187]) {
      const answer = learner.learn({ ...contents, site: { ...contents.site, elevation } }, () => {});
      await settled();
      await hand().goOn();
      hand().tell();
      expect((await answer)?.flown).toHaveLength(2);
    }
    expect(hand().jobs).toEqual(['flights', 'learn', 'learn']);
  });
});

describe('[L82] a slow old answer never beats a newer choice', () => {
  test('the older question answers null at once, and its worker stops at the next slice', async () => {
    const { learner, hand } = made();
    const old = learner.learn(contents, () => {});
    await settled();
    const answer = learner.learn(fewer, () => {});
    expect(await old).toBeNull();
    await settled();
    await hand().goOn();
    expect(hand().answers.filter((a) => 'cancelled' in a)).toHaveLength(1);
    hand().tell();
    expect((await answer)?.flown.map(({ kind }) => kind)).toEqual(['arrival']);
  });

  test('an old answer that is on its way already is dropped', async () => {
    const { learner, hand } = made();
    const old = learner.learn(contents, () => {});
    await settled();
    await hand().goOn();
    // Answered, but not heard yet, when the next question comes.
    const answer = learner.learn(fewer, () => {});
    await settled();
    hand().tell();
    expect(await old).toBeNull();
    let known: Learned | null | undefined;
    void answer.then((learned) => (known = learned));
    await settled();
    expect(known).toBeUndefined();
    await hand().goOn();
    hand().tell();
    expect((await answer)?.flown).toHaveLength(1);
  });

  test('cancel answers null and tells the worker; close lets it go', async () => {
    const { learner, hand } = made();
    const answer = learner.learn(contents, () => {});
    await settled();
    learner.cancel();
    expect(await answer).toBeNull();
    expect(hand().jobs.at(-1)).toBe('cancel');
    await hand().goOn();
    expect(hand().answers.some((a) => 'learned' in a)).toBe(false);
    learner.close();
    expect(hand().isTerminated).toBe(true);
  });

  test('cancelled while the flights are still being packed: the worker is never asked', async () => {
    let go: (() => void) | null = null;
    let clock = 0;
    const learner = new FlightLearner({
      make: () => {
        throw new Error('expected no worker');
      },
      breathe: () => new Promise<void>((resolve) => (go = resolve)),
      now: () => (clock += 100),
    });
    const answer = learner.learn(contents, () => {});
    learner.cancel();
    (go as (() => void) | null)?.();
    expect(await answer).toBeNull();
  });
});

test('[L83] a worker that dies is told in words, and the next question gets a new one with the flights', async () => {
  const { learner, hands, hand } = made();
  const answer = learner.learn(contents, () => {});
  await settled();
  hand().onerror?.(new Event('error'));
  await expect(answer).rejects.toThrow('ran out of memory');
  const next = learner.learn(contents, () => {});
  await settled();
  expect(hands).toHaveLength(2);
  expect(hand().jobs).toEqual(['flights', 'learn']);
  await hand().goOn();
  hand().tell();
  expect((await next)?.other).toBe(0);
});
