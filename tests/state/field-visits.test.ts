import { describe, expect, it } from 'vitest';
import { visitDay } from '../../src/figures/now/today';
import { FieldVisits } from '../../src/state/field-visits';

function store(text: string | null = null) {
  let kept = text;
  return { read: () => kept, write: (to: string) => ((kept = to), true) };
}
const day = (iso: string, reference: readonly [number, number] = [18.17, 50.93]) =>
  visitDay({ reference, timeZone: 'Europe/Warsaw' }, Date.parse(iso));

describe('the visit under way', () => {
  it('[P53] is found again by a page that is loaded anew, until it is left', () => {
    const kept = store();
    const today = day('2026-06-21T10:00Z');
    new FieldVisits(kept).keep(today, { spot: 'lane', turns: 1, watching: true });
    const again = new FieldVisits(kept);
    expect(again.on(today)).toEqual({ spot: 'lane', turns: 1, watching: true });
    again.leave();
    expect(new FieldVisits(kept).on(today)).toBeNull();
  });

  it('[P54] is of one field and of its own local date', () => {
    const kept = store();
    const visits = new FieldVisits(kept);
    visits.keep(day('2026-06-21T10:00Z'), { spot: null, turns: 0, watching: false });
    // Still the 21st in UTC, the 22nd at the field.
    expect(visits.on(day('2026-06-21T22:30Z'))).toBeNull();
    expect(visits.on(day('2026-06-20T22:30Z'))).not.toBeNull();
    expect(visits.on(day('2026-06-21T10:00Z', [18.18, 50.93]))).toBeNull();
  });

  it('[P55] what is damaged counts as none, and one damaged field spoils no other', () => {
    const today = day('2026-06-21T10:00Z');
    for (const text of [null, '', '{', '[]', '7', '{"day":7}'])
      expect(new FieldVisits(store(text)).on(today), String(text)).toBeNull();
    const odd = JSON.stringify({ day: today, spot: 'lane', turns: -2, watching: 'yes' });
    expect(new FieldVisits(store(odd)).on(today)).toEqual({ spot: 'lane', turns: 0, watching: false });
  });
});
