import { describe, expect, it } from 'vitest';
import { problemsOf } from '../../../src/figures/checks/problems';
import { contentsOf, spotFeature } from '../../support/contents';

const noon = Date.parse('2026-06-21T12:00+02:00');
const reasons = (access: object, rules: object = {}) =>
  problemsOf(
    contentsOf([spotFeature('s', [18.17, 50.93], { access })], {
      site: { timeZone: 'Europe/Warsaw' },
      rules,
    }),
    [],
    noon,
  ).map(({ id, reason }) => [id, reason]);

describe('what is doubtful about access, among the problems', () => {
  it('[F906] arguable: a permission that begins tomorrow is none today, and is said to', () => {
    const permission = { answer: 'granted', from: '2026-06-22' };
    expect(reasons({ permission })).toEqual([['s', 'The permission begins on 2026-06-22, after this day.']]);
  });

  it('[F907] arguable: one that was granted and holds is no doubt, nor is a refusal: that is an answer', () => {
    expect(reasons({ permission: { answer: 'granted', until: '2026-06-21' } })).toEqual([]);
    expect(reasons({ permission: { answer: 'refused' } })).toEqual([]);
  });

  it("[F908] arguable: the field's rules are doubted once, not at every spot; an answer that waits is doubted where it waits", () => {
    const rules = { checkedOn: '2024-06-01' };
    expect(reasons({ permission: { answer: 'waiting', askedOn: '2026-06-10' } }, rules)).toEqual([
      [null, "The field's rules were last checked on 2024-06-01, over a year before."],
      ['s', 'Permission was asked for on 2026-06-10; there is no answer yet.'],
    ]);
  });
});
