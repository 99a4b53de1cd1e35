import type { Derived } from '../../state/derived.svelte';
import type { Formats } from '../formats';

/** What the clock at the airfield shows at the two moments: where they follow the sun, not what was typed once. */
export const momentClocks = (
  { instantA, instantB, timeZone }: Pick<Derived['day'], 'instantA' | 'instantB' | 'timeZone'>,
  format: Pick<Formats, 'clockAt'>,
): Readonly<Record<'a' | 'b', string>> => ({
  a: format.clockAt(instantA, timeZone),
  b: format.clockAt(instantB, timeZone),
});
