import { describe, expect, it } from 'vitest';
import ICAL from 'ical.js';
import { calendarText } from '../../../src/exports/calendar';
import type { FoundDay } from '../../../src/ports/trips';
import { readPreferences } from '../../../src/state/preferences.svelte';
import { formatsFor } from '../../../src/ui/formats';
import { clashes, inOrder, tripEntries, tripSheetOf } from '../../../src/ui/trip/trip-of';
import { worthWords } from '../../../src/ui/trip/words';

const needs = { format: formatsFor(readPreferences(null)), by: 'bicycle' as const };
const at = (text: string) => Date.parse(text);
const found = (survey: string, date: string, from: string, to: string, way: number | null): FoundDay => ({
  survey,
  name: survey.toUpperCase(),
  credits: [`Data of ${survey}`, 'Data of all'],
  way: way === null ? null : { distance: 20_000, minutes: way },
  day: {
    date,
    timeZone: 'UTC',
    name: survey,
    position: [18, 51],
    flowFrom: 'survey',
    flows: [{ ends: ['25'], share: 1 }],
    goodMinutes: 60,
    against: null,
    traffic: { perHour: 12, from: 'typed' },
    goodPasses: 12,
    stays: [
      {
        spot: 's1',
        name: 'Gate',
        position: [18, 51],
        path: '25 arrival',
        from: at(`${date}T${from}Z`),
        to: at(`${date}T${to}Z`),
        focal: { shortest: 200, longest: 310 },
        lens: '100-400',
        checkFirst: true,
      },
    ],
  },
});
const trip = [
  found('c', '2026-06-21', '15:00', '16:00', null),
  found('a', '2026-06-20', '06:00', '07:00', 45),
  found('b', '2026-06-20', '06:30', '09:00', 20),
];

describe('[F766] a trip over several fields', () => {
  it('is one ladder in the order of time, and says where two fields want one at once', () => {
    expect(inOrder(trip).map(({ survey }) => survey)).toEqual(['a', 'b', 'c']);
    expect(clashes(trip)).toEqual(['A lasts until after B has begun: one of them is cut short.']);
    expect(clashes([trip[0], trip[1]] as FoundDay[])).toEqual([]);
  });

  it('is one calendar that another program reads: three entries, called out before one has to leave', () => {
    const text = calendarText(tripEntries(trip, needs), at('2026-06-01T00:00Z'));
    const events = new ICAL.Component(ICAL.parse(text) as never).getAllSubcomponents('vevent');
    expect(events.map((event) => event.getFirstPropertyValue('summary'))).toEqual(
      Array.from({ length: 3 }, () => 'Gate (check first): 25 arrival'),
    );
    expect(new Set(events.map((event) => event.getFirstPropertyValue('uid'))).size).toBe(3);
    const [first] = tripEntries(trip, needs);
    expect(first?.alarm?.minutesBefore).toBe(50);
    expect(first?.notes).toContain('Leave by 05:15');
  });

  it('is one sheet with the credits of all, each once', () => {
    const sheet = tripSheetOf(trip, needs);
    expect(sheet.credits).toEqual(['Data of a', 'Data of all', 'Data of b', 'Data of c']);
    expect(sheet.days.map(({ rungs }) => rungs.length)).toEqual([1, 1, 1]);
    expect(sheet.cautions.join(' ')).toContain('Not for navigation');
  });

  it('says why, and where nobody knows the traffic says that', () => {
    const { day } = trip[0] as FoundDay;
    expect(worthWords(day)).toBe('60 good minutes × 12 movements an hour (as typed): about 12 good passes.');
    expect(worthWords({ ...day, traffic: null, goodPasses: null })).toBe('60 good minutes; traffic unknown.');
    expect(worthWords({ ...day, against: 'photography-forbidden' })).toContain('forbids photography');
  });
});
