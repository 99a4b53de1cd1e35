import type { BaseReport, Credit, BaseGround } from '../../state/base-maps/ground';
import { providers } from '../../state/base-maps/providers';
import { joinedCredits } from './credit-text';

export interface OnMap {
  readonly ground: BaseGround;
  readonly report: Pick<BaseReport, 'credit'>;
  /** Whose the ground plan, the data of the survey and the heights are, as far as they are there. */
  readonly own: readonly string[];
  /** The world's land lies under it. */
  readonly withLand: boolean;
}

/** Whose work the map shows. */
export function mapCredit({ ground, report, own, withLand }: OnMap): Credit {
  // Also while it cannot be reached: what came before may still be on the screen.
  const isOurs = providers.some((provider) => provider.ground === ground);
  const base = ground.kind === 'plain' ? [] : isOurs ? ground.credit : [...ground.credit, ...report.credit];
  const named = own.map((text) => ({ text: text.replace(/\.$/, ''), href: null }));
  const natural = withLand ? [{ text: 'Land: Natural Earth', href: null }] : [];
  return joinedCredits([base, named, natural]);
}
