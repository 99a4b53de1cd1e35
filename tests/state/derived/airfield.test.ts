import { describe, expect, it } from 'vitest';
import { Airfield } from '../../../src/state/derived/airfield.svelte';
import type { Day } from '../../../src/state/derived/day.svelte';
import type { Sights } from '../../../src/state/derived/sights.svelte';
import type { JsonObject } from '../../../src/survey/json';
import { contentsOf, spotFeature } from '../../support/contents';

/** Ids of the spots that are closed on a day: one public, one whose request was refused, one granted on the 21st alone. */
function closedOn(date: string, rules: JsonObject = {}): string[] {
  const at = [18.16, 50.9] as const;
  const contents = contentsOf(
    [
      spotFeature('public', at, { access: { status: 'public' } }),
      spotFeature('refused', at, { access: { status: 'public', permission: { answer: 'refused' } } }),
      spotFeature('granted', at, {
        access: {
          status: 'forbidden',
          permission: { answer: 'granted', from: '2026-06-21', until: '2026-06-21' },
        },
      }),
    ],
    { rules },
  );
  const survey = { contents, openingProblems: [], terrain: null, airfieldTools: undefined };
  return [...new Airfield(survey, { date } as Day, {} as Sights).closedSpots];
}

describe('[F767] where nobody may stand on a day', () => {
  it('goes by what was asked and answered, on that day', () => {
    expect(closedOn('2026-06-21')).toEqual(['refused']);
    expect(closedOn('2026-06-22')).toEqual(['refused', 'granted']);
  });

  it('is everywhere, where the field forbids photography; asking first closes nothing', () => {
    expect(closedOn('2026-06-21', { photography: 'forbidden' })).toEqual(['public', 'refused', 'granted']);
    expect(closedOn('2026-06-21', { photography: 'ask' })).toEqual(['refused']);
  });
});
