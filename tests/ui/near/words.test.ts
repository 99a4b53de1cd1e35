import { describe, expect, it } from 'vitest';
import type { KeptSurvey } from '../../../src/ports/kept-surveys';
import { distanceWords, keptOf, minutesWords } from '../../../src/ui/near/words';

const survey = (id: string, facts: KeptSurvey['facts']): KeptSurvey => ({
  id,
  name: id,
  changed: 0,
  size: 1,
  facts,
});

describe('[L31] airfields near a place, in words', () => {
  it('says times and distances as people do', () => {
    expect([0.2, 59.4, 60, 125].map(minutesWords)).toEqual(['1 min', '59 min', '1 h', '2 h 5 min']);
    expect([1_240, 9_949, 9_951, 61_400].map(distanceWords)).toEqual(['1.2 km', '9.9 km', '10 km', '61 km']);
  });

  it('knows the surveys of a field by its code or by where they lie, and not the neighbour’s', () => {
    const airfield = { code: 'ZZ01', otherCodes: ['TOL'], position: [18.17, 50.93] as const };
    const day = { date: null, spots: 1 };
    const kept = [
      survey('code', { ...day, place: 'ZZ01' }),
      survey('other code', { ...day, place: 'TOL', at: [0, 0] }),
      survey('drawn there', { ...day, place: '', at: [18.19, 50.925] }),
      survey('neighbour', { ...day, place: 'ZZ02', at: [18.3, 50.93] }),
      survey('old', null),
    ];
    expect(keptOf(airfield, kept).map(({ id }) => id)).toEqual(['code', 'other code', 'drawn there']);
  });
});
