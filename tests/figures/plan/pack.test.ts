import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { moveTime } from '../../../src/figures/plan/day-plan';
import { packFor, type PackItem } from '../../../src/figures/plan/pack';
import { staysOf } from '../../../src/figures/plan/stays-of';
import { takenAlong } from '../../../src/figures/plan/taken-along';
import { readContents } from '../../../src/survey/contents';
import { setAccess } from '../../../src/survey/edits/set-properties';
import { setPermission } from '../../../src/survey/edits/set-permission';
import { setRules } from '../../../src/survey/edits/set-rules';
import type { Survey } from '../../../src/survey/document';
import { opened } from '../../support/contents';

const survey = opened(readFileSync('sample-sites/tolverby.geojson', 'utf8'));
const orchard = {
  spot: 's5x9ht',
  path: 'r8k2v4/25/arrival',
  from: '2026-06-21T15:00:00Z',
  to: '2026-06-21T18:30:00Z',
};
const deck = {
  spot: 's2w6bn',
  path: 'r8k2v4/25/arrival',
  from: '2026-06-21T06:00:00Z',
  to: '2026-06-21T08:00:00Z',
};
function pack(from: Survey, windows = [orchard, deck]): PackItem[] {
  const contents = readContents(from);
  const taken = takenAlong(contents, null, windows);
  return packFor(
    staysOf(taken, contents.site.timeZone, (a, b) => moveTime(contents, a, b)),
    contents,
  );
}
const kinds = (items: readonly PackItem[]) => items.map(({ kind }) => kind);
const of = <K extends PackItem['kind']>(items: readonly PackItem[], kind: K) =>
  items.filter((item): item is Extract<PackItem, { kind: K }> => item.kind === kind);

describe('what a day needs', () => {
  it('[F930] takes the lenses that the windows are planned with, each once, with what it is for', () => {
    const contents = readContents(survey);
    const planned = takenAlong(contents, null, [orchard, deck]).map(({ lens }) => lens?.lens.key);
    const lenses = of(pack(survey), 'lens');
    expect(lenses.map(({ lens }) => lens.key).toSorted()).toEqual([...new Set(planned)].toSorted());
    expect(lenses.length).toBeLessThan(contents.kit.lenses.length);
    expect(lenses.flatMap(({ paths }) => paths)).toContain('25 arrival');
  });

  it('[F931] counts cards and batteries by the hours one stands, not by the hours between', () => {
    // 2 h and 3.5 h: 5.5 h x 300 = 1,650 frames, and ceil(5.5 / 2.5) + 1 batteries.
    expect(of(pack(survey), 'cards')).toEqual([{ kind: 'cards', frames: 1700 }]);
    expect(of(pack(survey), 'batteries')).toEqual([{ kind: 'batteries', count: 4 }]);
    expect(pack(survey, [])).toEqual([]);
  });

  it('[F932] arguable: the deck says no ladder, the path says a small step; the list has that step and no more', () => {
    const ladders = of(pack(survey), 'ladder');
    expect(ladders.map(({ spot, said }) => [spot.id, said])).toEqual([
      ['s5x9ht', 'a small step at most; stay off the fence'],
    ]);
    const without = setAccess(survey, 's5x9ht', { ladder: undefined });
    expect(of(pack(without), 'ladder')).toEqual([]);
    expect(of(pack(setRules(without, { ladders: 'allowed' })), 'ladder')).toHaveLength(1);
  });

  it('[F933] arguable: a receiver goes along while nobody knows the rule, and stays at home where it is forbidden', () => {
    expect(kinds(pack(survey))).toContain('radio');
    expect(kinds(pack(setRules(survey, { radio: 'forbidden' })))).not.toContain('radio');
  });

  it('[F934] arguable: a permission is taken along on its days only; before its first day one must ask', () => {
    const granted = { answer: 'granted', from: '2026-06-21', until: '2026-06-21', reference: 'T-17' };
    const on = pack(setPermission(survey, 's2w6bn', granted));
    expect(of(on, 'permission').map(({ permission }) => permission.reference)).toEqual(['T-17']);
    const early = pack(setPermission(survey, 's2w6bn', { ...granted, from: '2026-06-22', until: undefined }));
    expect(of(early, 'permission')).toEqual([]);
    expect(of(early, 'ask-first').map(({ spot }) => spot.id)).toEqual(['s2w6bn']);
  });
});
