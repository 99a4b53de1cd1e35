import { describe, expect, test } from 'vitest';
import { staysOf } from '../../../src/figures/plan/stays-of';
import type { TakenAlong } from '../../../src/figures/plan/taken-along';
import { readPreferences } from '../../../src/state/preferences.svelte';
import { readContents } from '../../../src/survey/contents';
import type { StandingSpot } from '../../../src/survey/schema/standing-spot';
import { formatsFor } from '../../../src/ui/formats';
import { calendarEntries, type CalendarNeeds } from '../../../src/ui/plan/calendar-entries';
import { field } from '../../map/field';

const [first] = readContents(field).spots;
if (!first) throw new Error('expected a spot');
const bank: StandingSpot = first;
const lane: StandingSpot = { ...first, id: 'lane', name: 'Mill Lane' };

const at = (clock: string, day = '21') => Date.parse(`2026-06-${day}T${clock}:00Z`);
const taken = (spot: StandingSpot, path: string, from: number, to: number): TakenAlong => ({
  chosen: { spot: spot.id, path, from: '', to: '' },
  from,
  to,
  spot,
  pathName: path,
  reading: null,
  at: null,
  lens: null,
  settings: null,
});
const needs: CalendarNeeds = {
  site: 'Tolverby',
  timeZone: 'UTC',
  format: formatsFor(readPreferences(null)),
  instead: ({ spot }) => (spot?.id === 'lane' ? ['If the wind turns to about 073°: stay.'] : []),
};
const walk = () => ({ minutes: 12, by: 'foot', metres: 900 }) as const;
const entries = (...windows: TakenAlong[]) => calendarEntries(staysOf(windows, needs.timeZone, walk), needs);

describe('[U953] entries of a calendar', () => {
  test('arrivals and departures of one spot and hour are one entry, whichever was ticked first', () => {
    const arrival = taken(bank, '25 arrival', at('14:00'), at('18:00'));
    const departure = taken(bank, '25 departure', at('13:30'), at('15:00'));
    const [entry, ...others] = entries(arrival, departure);
    expect(others).toEqual([]);
    expect(entry).toMatchObject({ from: at('13:30'), to: at('18:00') });
    expect(entry?.title).toMatch(/: 25 departure, 25 arrival$/);
    expect(entry?.notes).toMatch(/25 departure, 13:30–15:00\n25 arrival, 14:00–18:00/);
    expect(entry?.uid).toBe(entries(departure, arrival)[0]?.uid);
  });
  test('one after the other at one spot are two, and one need not leave', () => {
    const morning = taken(bank, '25 arrival', at('06:00'), at('08:00'));
    const [, later] = entries(morning, taken(bank, '25 arrival', at('08:00'), at('09:00')));
    expect(later?.notes).toMatch(/^Be there by 08:00\./);
  });
  test('a move says when to leave where one stood, and the alarm comes five minutes before that', () => {
    const [here, there] = entries(
      taken(bank, '25 arrival', at('14:00'), at('15:00')),
      taken(lane, '25 departure', at('16:00'), at('17:00')),
    );
    expect(here).toMatchObject({ alarm: { minutesBefore: 60 } });
    expect(there?.notes).toMatch(/^Leave .+ by 15:48 \(12 min on foot\)\./);
    expect(there?.alarm).toMatchObject({
      minutesBefore: 17,
      text: expect.stringMatching(/by 15:48/) as string,
    });
    expect(there?.notes).toMatch(/If the wind turns to about 073°: stay\./);
    expect(here?.notes).not.toMatch(/wind turns/);
  });
  test('the day before is no place to leave from', () => {
    const [, next] = entries(
      taken(bank, '25 arrival', at('14:00'), at('15:00')),
      taken(lane, '25 arrival', at('06:00', '22'), at('07:00', '22')),
    );
    expect(next?.notes).toMatch(/^Be there by 06:00\./);
  });
});
