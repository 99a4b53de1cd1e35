import type { Rules } from '../../survey/schema/rules';
import type { StandingSpot } from '../../survey/schema/standing-spot';

/** Whether a ladder may stand at a spot. `said`: in somebody's own words, which go before any summary of them. */
export interface LadderAt {
  readonly may: 'yes' | 'as-said' | 'ask' | 'no' | 'unknown';
  readonly said: string | null;
}

/** Words with which people say that there is to be none: "no: the verge is narrow", "not needed". */
const none = /^(?:no|not|none|never|keine?|nein)\b/i;

/**
 * A spot's own word goes before the field's. Where nobody says anything it stays unknown and is to be asked for: no
 * ladder at a fence without leave (common practice, no source).
 */
export function ladderAt({ access }: Pick<StandingSpot, 'access'>, rules: Pick<Rules, 'ladders'>): LadderAt {
  const { ladder } = access;
  if (typeof ladder === 'boolean') return { may: ladder ? 'yes' : 'no', said: null };
  const said = ladder?.trim() ?? '';
  if (said !== '') return { may: none.test(said) ? 'no' : 'as-said', said };
  const byRule = { allowed: 'yes', ask: 'ask', forbidden: 'no', unknown: 'unknown' } as const;
  return { may: byRule[rules.ladders ?? 'unknown'], said: null };
}
