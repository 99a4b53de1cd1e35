import { describe, expect, it } from 'vitest';
import type { FieldDay } from '../../src/figures/trip/field-day';
import type { FoundDay } from '../../src/ports/trips';
import { FieldTrips, type TripHand } from '../../src/services/field-trips';
import { Ways } from '../../src/state/ways.svelte';
import type { TripRequest } from '../../src/services/trip-messages';
import { settle } from '../support/later';

const dayOf = (name: string, date: string, goodMinutes = 100): FieldDay => ({
  date,
  timeZone: 'Europe/Warsaw',
  name,
  position: [18, 51],
  flowFrom: 'survey',
  flows: [],
  stays: [],
  goodMinutes,
  against: null,
  traffic: null,
  goodPasses: null,
});

function setUp(texts: Readonly<Record<string, string>>) {
  const requests: TripRequest[] = [];
  const made = { hands: 0, ended: 0 };
  let hand: TripHand | null = null;
  const store = { text: null as string | null };
  const ways = new Ways({ read: () => store.text, write: (text) => ((store.text = text), true) });
  const trips = new FieldTrips({
    store: {
      read: (id) =>
        Promise.resolve(
          texts[id] === undefined ? null : { id, name: id, changed: 0, revision: 1, text: texts[id] },
        ),
    },
    ways,
    makeHand: () => {
      made.hands++;
      hand = {
        postMessage: (request) => void requests.push(request),
        onmessage: null,
        onerror: null,
        terminate: () => void made.ended++,
      };
      return hand;
    },
  });
  const answer = async (data: Parameters<NonNullable<TripHand['onmessage']>>[0]['data']) => {
    hand?.onmessage?.({ data });
    await settle();
  };
  return { trips, ways, requests, made, answer, lost: () => hand?.onerror?.(null) };
}
const surveys = ['a', 'b', 'gone', 'c'].map((id) => ({ id, name: id.toUpperCase() }));
const asked = { surveys, dates: ['2026-06-20'], wind: null };

describe('[F765] kept surveys side by side', () => {
  it('are read one at a time; what cannot be read is said, and the others go on', async () => {
    const { trips, requests, made, answer, lost } = setUp({ a: 'text a', b: 'text b', c: 'text c' });
    const told: FoundDay[] = [];
    const { done } = trips.compare(asked, (found) => told.push(found));
    await settle();
    expect(requests.map(({ text }) => text)).toEqual(['text a']);
    await answer({ part: 'day', day: dayOf('A', '2026-06-20'), credits: ['Data of A'] });
    await answer({ part: 'end' });
    expect(requests.map(({ text }) => text)).toEqual(['text a', 'text b']);
    await answer({ part: 'refused', reason: 'It is no survey.' });
    lost();
    expect(await done).toEqual([
      'B: It is no survey.',
      'GONE is not kept on this device any more.',
      'C: the browser could not compute it: it may be too large.',
    ]);
    expect(told.map(({ survey, credits }) => [survey, credits])).toEqual([['a', ['Data of A']]]);
    expect(made).toEqual({ hands: 1, ended: 1 });
  });

  it('cancelled: the worker ends, and nothing that comes late is told', async () => {
    const { trips, made, answer } = setUp({ a: 'text a' });
    const told: FoundDay[] = [];
    const comparing = trips.compare(asked, (found) => told.push(found));
    await settle();
    comparing.cancel();
    expect(await comparing.done).toBeNull();
    expect(made.ended).toBe(1);
    await answer({ part: 'day', day: dayOf('A', '2026-06-20'), credits: [] });
    expect(told).toEqual([]);
  });

  it('are ranked by what is typed by now, and by the way from where one starts by now', () => {
    const { trips, ways } = setUp({});
    const found = ['a', 'b'].map((id): FoundDay => ({
      survey: id,
      name: id,
      day: dayOf(id, '2026-06-20'),
      credits: [],
      way: null,
    }));
    expect(trips.rank(found).ranked).toEqual([]);
    ways.setTraffic('a', 6);
    ways.setTraffic('b', 12);
    expect(trips.rank(found).ranked.map(({ survey, day }) => [survey, day.goodPasses])).toEqual([
      ['b', 20],
      ['a', 10],
    ]);
    expect(trips.rank(found).ranked[0]?.way).toBeNull();
    ways.from = { name: 'Home', position: [18, 50.9] };
    // 0.1 degrees of latitude: 11.1 km.
    expect(trips.rank(found).ranked[0]?.way?.distance).toBeCloseTo(11_126, -1);
    ways.setTraffic('b', null);
    expect(trips.rank(found)).toMatchObject({ ranked: [], unranked: [{ survey: 'a' }, { survey: 'b' }] });
  });
});
