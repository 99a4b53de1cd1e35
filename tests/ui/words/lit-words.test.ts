import { describe, expect, it } from 'vitest';
import type { LitSide } from '../../../src/figures/types';
import { clockAt } from '../../../src/time/local-time';
import { dayWords, litWords, sideLabel } from '../../../src/ui/words/lit-words';

const clock = (instant: number) => clockAt(instant, 'Europe/Zurich');
const at = (time: string) => Date.parse(`2026-06-21T${time}:00+02:00`);
const day = { from: at('00:00'), to: at('00:00') + 86_400_000 };
const spans = [
  { from: at('05:31'), to: at('07:58'), side: 'north' },
  { from: at('08:20'), to: at('20:10'), side: 'south' },
];
const sun = { azimuth: 90, altitude: 20, geometricAltitude: 20 };
const lit = (side: string): LitSide => ({ sun, side, why: 'lit' });
const words = (light: LitSide | null, time: string) => litWords(light, at(time), spans, day, clock);

describe('the lit side at a moment', () => {
  it('comes with its hours', () => {
    expect(words(lit('south'), '09:00')).toBe('south side lit, from 08:20 until 20:10');
  });
  it('says what comes next while the sun is along the runway or down', () => {
    expect(words({ sun, side: null, why: 'along-runway' }, '08:10')).toBe(
      'the sun is along the runway; south side lit from 08:20',
    );
    expect(words({ sun, side: null, why: 'sun-down' }, '03:00')).toBe(
      'the sun is down; north side lit from 05:31',
    );
    expect(words({ sun, side: null, why: 'sun-down' }, '23:00')).toBe('the sun is down');
  });
  it('has no hours where the light lasts all day', () => {
    const whole = [{ from: day.from, to: day.to, side: 'west' }];
    expect(litWords(lit('west'), at('12:00'), whole, day, clock)).toBe('west side lit');
  });
  it('asks for a direction first', () => {
    expect(words(null, '12:00')).toBe('the runway has no direction yet');
  });
});

describe('the whole day', () => {
  it('lists both sides in order', () => {
    expect(dayWords(spans, day, clock)).toBe('north side 05:31–07:58, south side 08:20–20:10');
  });
  it('ends at midnight, and says when nothing is lit', () => {
    expect(dayWords([{ from: at('13:00'), to: day.to, side: 'west' }], day, clock)).toBe(
      'west side 13:00–midnight',
    );
    expect(dayWords([], day, clock)).toBe('neither side is lit on this day');
  });
});

it('is labelled in as many words as there is room for', () => {
  const times = ['07:14', '15:33'] as const;
  expect([240, 200, 130, 80, 20, 5].map((room) => sideLabel('south-west', room, times))).toEqual([
    '07:14 south-west side 15:33',
    '07:14 south-west 15:33',
    '07:14 SW 15:33',
    'south-west',
    'SW',
    '',
  ]);
});
