import { describe, expect, it } from 'vitest';
import type { EndUse } from '../../../src/figures/flown/end-uses';
import { pastEnds, pastFlows, pastUse, type PastUse } from '../../../src/figures/flown/past-use';
import { byMonth } from '../../../src/figures/traffic/flow/end-shares';
import { cellOf, monthHours, speedClasses, type WindRecord } from '../../../src/survey/schema/wind-record';
import { contentsOf, plainSubject, runwayFeature } from '../../support/contents';

const ends = [{ designator: '06' }, { designator: '24' }] as const;
const field = ({ closed = false } = {}, flow: object = {}) =>
  contentsOf(
    [
      runwayFeature('main', [8.01, 50.02], [8.04, 50.0343], ends),
      runwayFeature(
        'old',
        [8.02, 50.01],
        [8.02, 50.02],
        [
          { designator: '18', closed },
          { designator: '36', closed },
        ],
      ),
    ],
    {
      subjects: [{ ...plainSubject, groundRun: 800 }],
      site: { reference: [8.02, 50.02], timeZone: 'UTC' },
      flow,
    },
  );

/** Ten years in which the wind stood on 06: 300 observations in every hour of every month. */
const tenYears: WindRecord = {
  source: 'made',
  from: '2015-01-01',
  to: '2024-12-31',
  timeZone: 'UTC',
  observations: 300 * monthHours,
  unread: 0,
  classes: speedClasses.map((kt) => ({ meanKt: kt, strongestKt: kt })),
  counts: Array.from({ length: monthHours }, () => [cellOf(4, 6), 300]),
};

const landed = (day: string, hour: number, end: 0 | 1 = 1, runway = 'main'): EndUse => ({
  runway,
  end,
  kind: 'arrival',
  instant: Date.parse(`${day}T${`${hour}`.padStart(2, '0')}:20:00Z`),
});
const date = (month: string, day: number) => `2026-${month}-${`${day}`.padStart(2, '0')}`;
const many = (month: string, days: number, each: number, hour = 10) =>
  Array.from({ length: days * each }, (_, i) => landed(date(month, 1 + (i % days)), hour));

/** Share of landings at an end in a month, or in one hour of it. */
function share(past: PastUse | null, end: 0 | 1, month: number, hour?: number, runway = 'main'): number {
  if (!past) return NaN;
  const { flows, observations } = pastFlows(past);
  const sum = (list: Float64Array) =>
    hour === undefined ? (byMonth(list)[month - 1] as number) : (list[(month - 1) * 24 + hour] as number);
  const of = flows.filter(({ arrivals }) => arrivals.some((a) => a.runway === runway && a.end === end));
  return of.reduce((total, { counts }) => total + sum(counts), 0) / sum(observations);
}

describe('[F735] forty flights of one week against ten years of wind', () => {
  it('a week is one turn of the weather: the winds stand, for its own month as well', () => {
    const past = pastUse(field(), tenYears, many('06', 7, 6));
    expect(past?.months).toEqual(Array(12).fill('winds'));
    expect(share(past, 0, 6)).toBe(1);
    // So do a thousand flights of that week.
    expect(pastUse(field(), tenYears, many('06', 7, 150))?.months[5]).toBe('winds');
  });

  it('twenty flights on ten days speak for their month, and for that month alone', () => {
    const past = pastUse(field(), tenYears, many('06', 10, 2));
    expect(past?.months.map((m) => m === 'flights')).toEqual(Array.from({ length: 12 }, (_, m) => m === 5));
    expect([share(past, 1, 6), share(past, 1, 7)]).toEqual([1, 0]);
    // One flight fewer, or one day fewer, and they do not.
    expect(pastUse(field(), tenYears, many('06', 10, 2).slice(1))?.months[5]).toBe('winds');
    expect(pastUse(field(), tenYears, many('06', 9, 3))?.months[5]).toBe('winds');
  });

  it('without a record of winds even a week is better than nothing, and it is told of how few', () => {
    const past = pastUse(field(), null, many('06', 7, 6));
    expect(past?.months).toEqual(Array.from({ length: 12 }, (_, m) => (m === 5 ? 'flights' : null)));
    expect(past?.flights).toBe(42);
    expect(share(past, 1, 6)).toBe(1);
  });

  it('who chooses one of the two gets that one', () => {
    const flights = many('06', 10, 2);
    expect(pastUse(field({}, { sharesFrom: 'winds' }), tenYears, flights)?.months[5]).toBe('winds');
    const chosen = pastUse(field({}, { sharesFrom: 'flights' }), tenYears, many('06', 7, 6));
    expect(chosen?.months[5]).toBe('flights');
    expect(chosen?.months[6]).toBeNull();
    // Chosen, but not there any more.
    expect(pastUse(field({}, { sharesFrom: 'flights' }), tenYears, [])?.months[5]).toBe('winds');
    expect(pastUse(field({}, { sharesFrom: 'winds' }), null, flights)?.months[5]).toBe('flights');
  });
});

describe('[F736] hours without flights', () => {
  it('say nothing of their own: no observation, no share, which is not a share of nothing', () => {
    const past = pastUse(field(), tenYears, many('06', 10, 2, 10));
    const { observations } = pastFlows(past as PastUse);
    expect(observations[5 * 24 + 10]).toBe(20);
    expect(observations[5 * 24 + 3]).toBe(0);
    expect(share(past, 1, 6, 10)).toBe(1);
    expect(share(past, 1, 6, 3)).toBeNaN();
  });

  it('are counted by the record’s clock, so that months of both can stand side by side', () => {
    const past = pastUse(field(), { ...tenYears, timeZone: 'Asia/Tokyo' }, many('06', 10, 2, 10));
    expect(past?.timeZone).toBe('Asia/Tokyo');
    expect(pastFlows(past as PastUse).observations[5 * 24 + 19]).toBe(20);
  });
});

describe('[F737] flights of a closed runway', () => {
  const flights = [
    ...many('06', 10, 2),
    ...Array.from({ length: 60 }, (_, i) => landed(date('06', 1 + (i % 20)), 10, 0, 'old')),
  ];

  it('tell of a field that is no more: they are left out, counted, and take no share from the others', () => {
    const past = pastUse(field({ closed: true }), tenYears, flights);
    expect(past).toMatchObject({ flights: 20, closed: 60 });
    expect(share(past, 1, 6)).toBe(1);
  });

  it('count while it is open', () => {
    const past = pastUse(field(), tenYears, flights);
    expect(past).toMatchObject({ flights: 80, closed: 0 });
    expect(share(past, 0, 6, undefined, 'old')).toBeCloseTo(0.75, 12);
  });

  it('of a closed runway alone, and no winds: nothing is known', () => {
    expect(pastUse(field({ closed: true }), null, flights.slice(20))).toBeNull();
  });
});

describe('[F738] flows out of single flights', () => {
  const left = (day: string, hour: number, end: 0 | 1): EndUse => ({
    ...landed(day, hour, end),
    kind: 'departure',
  });

  it('landings and take-offs at one end are one flow; a share of each stays what it was', () => {
    const flights = [
      ...many('06', 10, 3),
      ...Array.from({ length: 10 }, (_, i) => landed(date('06', 1 + i), 10, 0)),
      ...Array.from({ length: 10 }, (_, i) => left(date('06', 1 + i), 10, 1)),
      ...Array.from({ length: 10 }, (_, i) => left(date('06', 1 + i), 10, 0)),
    ];
    const past = pastUse(field(), null, flights) as PastUse;
    expect(share(past, 1, 6)).toBeCloseTo(0.75, 12);
    const { flows, observations } = pastFlows(past);
    const at = 5 * 24 + 10;
    const of = (end: 0 | 1) => flows.filter(({ departures }) => departures.some((d) => d.end === end));
    expect(
      of(1).reduce((n, { counts }) => n + (counts[at] as number), 0) / (observations[at] as number),
    ).toBeCloseTo(0.5, 12);
    // Half the time both are at 24, a quarter both at 06; between them it lands on 24 while it leaves from 06.
    const joint = Object.fromEntries(
      flows.map(({ arrivals, departures, counts }) => [
        `${arrivals.map((a) => a.end).join()}-${departures.map((d) => d.end).join()}`,
        (counts[at] as number) / (observations[at] as number),
      ]),
    );
    expect(joint['1-1']).toBeCloseTo(0.5, 12);
    expect(joint['0-0']).toBeCloseTo(0.25, 12);
    expect(joint['1-0']).toBeCloseTo(0.25, 12);
  });

  it('where nobody recorded a take-off they are taken to leave as they land', () => {
    const past = pastUse(field(), null, many('06', 10, 2)) as PastUse;
    const [flow] = pastFlows(past).flows;
    expect(flow).toMatchObject({ arrivals: [{ end: 1 }], departures: [{ end: 1 }] });
    // What was seen is told as seen: shares of ends know of no take-off.
    expect(pastEnds(past).ends.map(({ use }) => use)).toEqual(['arrivals']);
  });
});
