import { describe, expect, it } from 'vitest';
import { ladderAt } from '../../../src/figures/access/ladder-at';
import { contentsOf, spotFeature } from '../../support/contents';

function ladder(said: unknown, ladders?: string) {
  const { spots, rules } = contentsOf([spotFeature('s', [18.17, 50.93], { access: { ladder: said } })], {
    rules: { ladders },
  });
  const [spot] = spots;
  if (!spot) throw new Error('expected a spot');
  return ladderAt(spot, rules);
}

describe('whether a ladder may stand there', () => {
  it('[F920] arguable: where nobody says anything it stays in the car; a fence without leave is no place for one', () => {
    expect(ladder(undefined).may).toBe('unknown');
    expect(ladder(undefined, 'unknown').may).toBe('unknown');
    expect(ladder(undefined, 'forbidden').may).toBe('no');
    expect(ladder(undefined, 'ask').may).toBe('ask');
  });

  it("[F921] arguable: the farmer's word goes before the field's, both ways", () => {
    expect(ladder(true, 'forbidden').may).toBe('yes');
    expect(ladder(false, 'allowed').may).toBe('no');
    expect(ladder('', 'allowed').may).toBe('yes');
  });

  it('[F922] arguable: words are kept as they are; those that begin with a no are one', () => {
    expect(ladder('a small step at most')).toEqual({ may: 'as-said', said: 'a small step at most' });
    expect(ladder('no: the verge is narrow').may).toBe('no');
    expect(ladder('not needed').may).toBe('no');
    // "normal" is no "no".
    expect(ladder('normal ones').may).toBe('as-said');
  });
});
