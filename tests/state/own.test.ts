import { describe, expect, it } from 'vitest';
import { Own } from '../../src/state/own.svelte';

function store(text: string | null = null) {
  let kept = text;
  return { read: () => kept, write: (to: string) => ((kept = to), true) };
}

describe("the user's own details", () => {
  it('[P50] are kept on the device and found again; what is damaged counts as nothing', () => {
    const [details, ticks] = [store(), store('{')];
    const own = new Own({ details, ticks });
    own.set({ name: 'A. Tester', minutes: 45, items: ['rain cape'] });
    own.tick('s 2026-06-21', 'identification', true);
    const again = new Own({ details, ticks });
    expect(again.details).toMatchObject({ name: 'A. Tester', minutes: 45, items: ['rain cape'], phone: '' });
    expect(again.ticked('s 2026-06-21')).toEqual(['identification']);
    expect(again.ticked('s 2026-06-22')).toEqual([]);
    expect(new Own({ details: store('{"minutes":-3,"name":7}'), ticks: store() }).details).toMatchObject({
      name: '',
      minutes: null,
    });
  });

  it('[P51] ticks are taken back, and of the last twenty visits only', () => {
    const own = new Own({ details: store(), ticks: store() });
    for (let day = 0; day < 25; day++) own.tick(`visit ${day}`, 'radio', true);
    own.tick('visit 24', 'radio', false);
    expect(own.ticked('visit 24')).toEqual([]);
    expect(own.ticked('visit 23')).toEqual(['radio']);
    expect(own.ticked('visit 5')).toEqual(['radio']);
    expect(own.ticked('visit 4')).toEqual([]);
  });

  it('[P52] a changed letter is kept for its visit, on no store, until it is forgotten', () => {
    const [details, ticks] = [store(), store()];
    const own = new Own({ details, ticks });
    const draft = { body: 'Good day, may I?', spots: new Set(['lane']) };
    own.keepDraft('s 2026-06-21', draft);
    expect(own.draft('s 2026-06-21')).toBe(draft);
    expect(own.draft('s 2026-06-22')).toBeNull();
    expect([details.read(), ticks.read()]).toEqual([null, null]);
    for (let day = 0; day < 19; day++) own.keepDraft(`visit ${day}`, draft);
    own.keepDraft('s 2026-06-21', draft);
    own.keepDraft('one more', draft);
    // The one that was changed longest ago goes first.
    expect(own.draft('visit 0')).toBeNull();
    expect(own.draft('s 2026-06-21')).toBe(draft);
    own.keepDraft('s 2026-06-21', null);
    expect(own.draft('s 2026-06-21')).toBeNull();
  });
});
