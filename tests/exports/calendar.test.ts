import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { calendarText, type CalendarEntry } from '../../src/exports/calendar';

const made = Date.parse('2026-06-01T09:30:15.250Z');
const entry: CalendarEntry = {
  uid: 's5x9ht.r8k2v4-25-arrival.20260621T144000Z@sunside',
  from: Date.parse('2026-06-21T14:40:00Z'),
  to: Date.parse('2026-06-21T19:05:00Z'),
  title: 'Orchard Path, east end: 25 arrival',
  place: 'Orchard Path, east end; Tolverby',
  position: [18.1932907, 50.9343302],
  alarm: null,
  notes: 'Front-lit, 260 mm at 310 m.\nLadder: a small step at most; stay off the fence\\verge, please.',
};
const parsed = (text: string) => {
  const calendar = new ICAL.Component(ICAL.parse(text) as unknown[]);
  return calendar.getAllSubcomponents('vevent').map((event) => new ICAL.Event(event));
};

describe('the calendar file (RFC 5545)', () => {
  test('[F290] says what the entry says, read by ical.js', () => {
    const text = calendarText([entry, { ...entry, uid: 'second', position: null, notes: '' }], made);
    const [first, second] = parsed(text);
    expect(first?.uid).toBe(entry.uid);
    expect(first?.summary).toBe(entry.title);
    expect(first?.location).toBe(entry.place);
    expect(first?.description).toBe(entry.notes);
    expect(first?.startDate.toJSDate().getTime()).toBe(entry.from);
    expect(first?.endDate.toJSDate().getTime()).toBe(entry.to);
    expect(first?.startDate.zone.tzid).toBe('UTC');
    expect(first?.component.getFirstPropertyValue('dtstamp')?.toString()).toBe('2026-06-01T09:30:15Z');
    expect(first?.component.getFirstPropertyValue('geo')).toEqual([50.93433, 18.193291]);
    expect(second?.component.getFirstProperty('geo')).toBeNull();
    expect(second?.description).toBeNull();
  });

  test('[F291] has CRLF after every line, and no line over 75 octets, whatever is written', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', maxLength: 300 }),
        fc.string({ maxLength: 200 }),
        (title, notes) => {
          // Control characters have no place in a calendar, and a lone CR is a line break.
          const clean = (raw: string) =>
            [...raw.replace(/\r\n?/g, '\n')]
              .filter((c) => c >= ' ' || c === '\n' || c === '\t')
              .filter((c) => c !== '\x7f')
              .join('');
          const text = calendarText([{ ...entry, title: `T${title}`, notes: `N${notes}` }], made);
          expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
          expect(text.replace(/\r\n/g, '')).not.toMatch(/[\r\n]/);
          const encoder = new TextEncoder();
          for (const line of text.split('\r\n')) expect(encoder.encode(line).length).toBeLessThanOrEqual(75);
          const [event] = parsed(text);
          expect(event?.summary).toBe(clean(`T${title}`));
          expect(event?.description).toBe(clean(`N${notes}`));
        },
      ),
      { seed: 5545, numRuns: 200 },
    );
  });

  test('[F292] is the same bytes twice, and an empty plan is a calendar without events', () => {
    expect(calendarText([entry], made)).toBe(calendarText([entry], made));
    expect(parsed(calendarText([], made))).toEqual([]);
  });

  test('[F955] calls out so many minutes before the start, in words, as ical.js reads it', () => {
    const alarm = { minutesBefore: 17, text: 'Leave Mill Lane, north; by 16:23' };
    const [event] = parsed(calendarText([{ ...entry, alarm }], made));
    const [found] = event?.component.getAllSubcomponents('valarm') ?? [];
    expect(found?.getFirstPropertyValue('action')).toBe('DISPLAY');
    expect(found?.getFirstPropertyValue('description')).toBe(alarm.text);
    const trigger = found?.getFirstPropertyValue('trigger') as ICAL.Duration | undefined;
    expect(trigger?.toSeconds()).toBe(-17 * 60);
    const silent = parsed(calendarText([entry], made))[0];
    expect(silent?.component.getAllSubcomponents('valarm')).toEqual([]);
  });
});
