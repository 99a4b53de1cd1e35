import { expect, test } from 'vitest';
import { ErrandClient, type ErrandHand } from '../../src/sweep/errand-client';
import { runErrand, type Errand, type ErrandAnswer } from '../../src/sweep/errands';
import type { SweepAsked } from '../../src/sweep/plan';
import { contentsOf, plainKit, plainSubject, runwayFeature } from '../support/contents';

const contents = contentsOf(
  [runwayFeature('main', [8.01, 50.02], [8.0205, 50.024], [{ designator: '06' }, { designator: '24' }])],
  { subjects: [plainSubject], kit: plainKit, site: { reference: [8.01, 50.02] } },
);
const asked: SweepAsked = {
  side: 1000,
  cell: 100,
  hours: null,
  step: 3600,
  names: null,
  wind: null,
  configuration: 0,
  at: Date.UTC(2026, 5, 21, 10),
};

class Slow implements ErrandHand {
  readonly errands: Errand[] = [];
  onmessage: ErrandHand['onmessage'] = null;
  onerror: ErrandHand['onerror'] = null;
  isTerminated = false;
  postMessage(errand: Errand): void {
    this.errands.push(errand);
  }
  terminate(): void {
    this.isTerminated = true;
  }
  async answer(i: number): Promise<ErrandAnswer> {
    const answer = await runErrand(this.errands[i] as Errand);
    this.onmessage?.({ data: answer });
    return answer;
  }
}

test('[P30] a newer errand ends the older one with its worker; the older answers null', async () => {
  const hands: Slow[] = [];
  const client = new ErrandClient(() => {
    const hand = new Slow();
    hands.push(hand);
    return hand;
  });
  const [lng, lat] = [8.015, 50.022];
  const first = client.run('ground', { contents, asked, position: [lng, lat] });
  const second = client.run('ground', { contents, asked, position: [8.0102, 50.0201] });
  expect(await first).toBeNull();
  expect([hands.length, hands[0]?.isTerminated]).toEqual([2, true]);
  await hands[1]?.answer(0);
  expect(await second).toMatchObject({ ground: 'closed', closedBy: 'runway' });
  client.close();
  expect(hands[1]?.isTerminated).toBe(true);
});

test('[P31] what cannot be answered is told in words', async () => {
  const hand = new Slow();
  const client = new ErrandClient(() => hand);
  const answer = client.run('inSight', { contents: { ...contents, runways: [] }, asked, terrain: null });
  const told = expect(answer).rejects.toThrow(/no runway/);
  await hand.answer(0);
  await told;
});

test('[P32] share in sight: all of it over open ground, nothing beyond the reach of the kit', async () => {
  const answer = await runErrand({ id: 1, name: 'inSight', body: { contents, asked, terrain: null } });
  if (answer.name !== 'inSight') throw new Error('expected shares');
  const known = [...answer.body].filter((share) => !Number.isNaN(share));
  expect(known.length).toBeGreaterThan(10);
  expect(known.every((share) => Math.abs(share - 1) < 1e-12)).toBe(true);
});
