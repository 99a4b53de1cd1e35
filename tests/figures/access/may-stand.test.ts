import { describe, expect, it } from 'vitest';
import { mayStand } from '../../../src/figures/access/may-stand';
import { contentsOf, spotFeature } from '../../support/contents';

type Properties = Record<string, unknown>;
const noon = Date.parse('2026-06-21T12:00+02:00');
function may(access: Properties, rules: Properties = {}, instant = noon) {
  const contents = contentsOf([spotFeature('s', [18.17, 50.93], { access })], {
    site: { timeZone: 'Europe/Warsaw' },
    rules,
  });
  const [spot] = contents.spots;
  if (!spot) throw new Error('expected a spot');
  return mayStand(spot, contents, instant);
}
const granted = { answer: 'granted', from: '2026-06-20', until: '2026-06-21' };

describe('whether one may stand at a spot', () => {
  it.each([
    ['a refusal', { answer: 'refused' }, 'forbidden'],
    ['its last day', granted, 'permitted'],
    ['its first day', { ...granted, from: '2026-06-21' }, 'permitted'],
    ['the day before', { ...granted, from: '2026-06-22', until: '2026-06-23' }, 'ask'],
    ['the day after', { ...granted, until: '2026-06-20' }, 'ask'],
    ['no answer yet', { answer: 'waiting' }, 'ask'],
  ])('[F900] %s', (_, permission, expected) => {
    expect(may({ status: 'permitted', permission }).status).toBe(expected);
  });

  it("[F901] arguable: the last day ends at the site's midnight, not at Greenwich's", () => {
    const permission = { ...granted, until: '2026-06-20' };
    expect(may({ permission }, {}, Date.parse('2026-06-20T21:59Z')).status).toBe('permitted');
    expect(may({ permission }, {}, Date.parse('2026-06-20T22:00Z')).status).toBe('ask');
  });

  it('[F902] arguable: a permit for the lane does not help where the field forbids photography', () => {
    expect(may({ permission: granted }, { photography: 'forbidden' })).toMatchObject({
      status: 'permitted',
      fieldForbids: true,
    });
  });

  it('[F903] arguable: asking again at a forbidden place does not open it while one waits', () => {
    expect(may({ status: 'forbidden', permission: { answer: 'waiting' } }).status).toBe('forbidden');
  });

  it("[F904] the spot's hours go before the field's, and what cannot be read is open and doubtful", () => {
    expect(may({ hours: '06:00-22:00' }, { hours: '18:00-20:00' }).open).toBe(true);
    expect(may({}, { hours: '18:00-20:00' }).open).toBe(false);
    const unread = may({ hours: 'when the gate is up' });
    expect(unread.open).toBe(true);
    expect(unread.doubts).toEqual([expect.stringContaining('Check hours')]);
  });

  it('[F905] a check is old after a year, not on the day', () => {
    expect(may({ checkedOn: '2025-06-21' }).doubts).toEqual([]);
    expect(may({ checkedOn: '2025-06-20' }, { checkedOn: '2025-06-20' }).doubts).toHaveLength(2);
    expect(may({ permission: { ...granted, until: '2026-06-20' } }).doubts).toHaveLength(1);
  });
});
